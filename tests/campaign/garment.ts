/** A whole garment, knitted from what the engine states; what does not hold is found. */
import { knitBand } from './bands.ts';
import { Findings } from './findings.ts';
import { bustOf, type KnittedBody, knitBody } from './knit-body.ts';
import { knitDrop } from './knit-drop.ts';
import { type KnittedPieces, knitFromNeck, knitToNeck } from './knit-joined.ts';
import { knitBackDarts } from './knit-pieces.ts';
import { knitRest } from './knit-rest.ts';
import { knitSetIn } from './knit-set-in.ts';
import { type KnittedSleeve, knitSleeve } from './knit-sleeve.ts';
import { knitBodyWedges } from './knit-wedges.ts';
import { knitOneRow } from './one-row.ts';
import { knitAtOwnGauge, knitBlend, readBack } from './reprinted.ts';
import type { Sweater } from './sweaters.ts';

export function knitGarment(sweater: Sweater): Findings {
  const findings = new Findings();
  const { body, sleeve } = knitPieces(sweater, findings);
  if (body !== undefined) {
    half(sweater, body, findings);
    knitBand(sweater, body.shaping.inAll.result.value, findings);
    knitOneRow(sweater, body.counts[0] ?? 1, findings);
  }
  if (sleeve !== undefined) {
    half(sweater, sleeve, findings);
    if (sleeve.shaping.spacing.kind === 'spaced') readBack(sleeve.shaping.spacing, sweater, findings);
  }
  knitAtOwnGauge(sweater, findings);
  knitBlend(sweater, findings);
  return findings;
}

function knitPieces(sweater: Sweater, findings: Findings): KnittedPieces {
  switch (sweater.construction) {
    case 'raglan':
    case 'round yoke':
      return (sweater.direction === 'up' ? knitToNeck : knitFromNeck)(sweater, findings);
    case 'set-in':
    case 'drop shoulder':
      return sewn(sweater, findings);
    default:
      return sweater.construction satisfies never;
  }
}

function sewn(sweater: Sweater, findings: Findings): KnittedPieces {
  const body = knitBody(sweater, bustOf(sweater), findings);
  knitBackDarts(sweater, bustOf(sweater), findings);
  const sleeve = knitSleeve(sweater, null, findings);
  if (body === undefined) return { body, sleeve };
  knitBodyWedges(sweater, body, findings);
  if (sweater.construction === 'set-in') knitSetIn(sweater, body, sleeve, findings);
  else knitDrop(sweater, body, findings);
  return { body, sleeve };
}

/** Half way through a piece that was knitted. */
function half(
  sweater: Sweater,
  { shaping, fabric, counts }: KnittedBody | KnittedSleeve,
  findings: Findings,
): void {
  knitRest(sweater, shaping.after, counts, fabric.gauge, fabric.edge, findings);
}
