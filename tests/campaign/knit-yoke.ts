/** A round yoke, knitted from its written rounds. */
import type { Joined } from '../../src/fit/join.ts';
import { cm, stitches } from '../../src/fit/units.ts';
import { type YokeAsk, type YokeShape, yoke } from '../../src/fit/yoke.ts';
import { evenly, THREE_ROUNDS } from '../../src/fit/yoke-scheme.ts';
import { Needle } from '../simulator/needle.ts';
import type { Findings } from './findings.ts';
import type { Sweater } from './sweaters.ts';
import type { KnittedTop } from './yoke-top.ts';

/** On the joined needle where it is knitted up; on stitches cast on at the neck where there is none. */
export function knitYoke(
  sweater: Sweater,
  joined: Joined,
  start: Needle | null,
  findings: Findings,
): KnittedTop | undefined {
  findings.at('yoke');
  const ask = askFor(sweater, joined.yoke);
  const made = yoke(ask);
  findings.meet(`yoke: ${made.kind}`);
  const others = made.kind === 'yoke' ? [] : made.alternatives;
  for (const { way, yoke: other } of others) {
    findings.meet(`yoke, way out: ${way}`);
    holdYoke(other, ask, Needle.castOn(begins(other), 'round'), findings);
  }
  const shape =
    made.kind === 'yoke' ? made : others.find((way) => underarmOf(way.yoke) === joined.yoke)?.yoke;
  if (shape === undefined) return undefined;
  const needle = start ?? Needle.castOn(begins(shape), 'round');
  holdYoke(shape, ask, needle, findings);
  const neck = ask.direction === 'up' ? needle.count : begins(shape);
  return { needle, rows: shape.rows, neck, centre: Math.floor(neck / 6) };
}

function askFor(sweater: Sweater, underarm: number): YokeAsk {
  const { toss, body: gauge } = sweater;
  const scheme = (toss[3] ?? 0) < 0.4 ? THREE_ROUNDS : evenly(1 + Math.floor(9 * (toss[4] ?? 0)));
  const multiple = [1, 1, 1, 4, 6, 8][Math.floor(6 * (toss[5] ?? 0))] ?? 1;
  return {
    direction: sweater.direction,
    gauge,
    depth: cm(sweater.depth * (0.9 + 0.4 * (toss[6] ?? 0))),
    underarm: stitches(underarm),
    neck: stitches(Math.max(1, Math.round(underarm * (0.26 + 0.3 * (toss[7] ?? 0))))),
    scheme,
    ...(multiple === 1 ? {} : { multiples: Array<number>(scheme.length + 1).fill(multiple) }),
  };
}

function begins({ shaping }: YokeShape): number {
  return shaping[0]?.spread.before ?? 0;
}

function underarmOf({ direction, shaping }: YokeShape): number {
  return (direction === 'up' ? shaping[0]?.spread.before : shaping.at(-1)?.spread.after) ?? 0;
}

function holdYoke(made: YokeShape, ask: YokeAsk, needle: Needle, findings: Findings): void {
  const begun = Math.max(...needle.heights);
  const logged = needle.log.length;
  const written = new Map(made.shaping.map((shaped) => [shaped.round as number, shaped.spread]));
  for (let round = 1; round <= made.rows; round++) {
    const row = written.get(round)?.row;
    findings.knit(() => (row === undefined ? needle.plain(1) : needle.written(row)));
  }
  findings.must(
    made.shaping.every((shaped) => shaped.round >= 1 && shaped.round <= made.rows),
    'a shaping round lies outside the yoke',
  );
  const stated = made.plateaus.flatMap((plateau) => Array<number>(plateau.rounds).fill(plateau.stitches));
  findings.same(stated.join(), needle.counts.slice(logged).join(), 'stitches of the rounds');
  for (const plateau of made.plateaus)
    findings.near(
      plateau.height,
      plateau.rounds / ask.gauge.rows.perCm,
      `height on ${plateau.stitches} stitches`,
    );
  const neck = ask.direction === 'up' ? needle.count : begins(made);
  findings.near(made.neckAround, neck / ask.gauge.stitches.perCm, 'neck around');
  findings.near(made.depth, made.rows / ask.gauge.rows.perCm, 'yoke depth');
  findings.same(made.rows, Math.max(...needle.heights) - begun, 'rows of the yoke');
  const rounds = Object.fromEntries(
    made.shaping.map((shaped, i) => [`shaping round ${i + 1}`, shaped.round]),
  );
  const heights = Object.fromEntries(
    made.plateaus.map((p) => [`height on ${p.stitches} stitches`, p.height]),
  );
  const { rows, depth, neckAround } = made;
  findings.states({ rows, depth, neckAround, ...rounds, ...heights }, made.workings);
}
