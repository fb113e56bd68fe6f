import { expect, it } from 'vitest';
import { budget } from '../campaign/budget.ts';
import { wholeCampaign } from '../campaign/whole-campaign.ts';

/** A small share of the campaign (npm run campaign), the same each time, so that it fails for what was changed alone. */
const RUNS = 150;

it('plans of the whole way, any wishes on any pattern, are knitted as they are told, to the stitch and row', () => {
  const met = wholeCampaign({ runs: RUNS, seed: budget(1).seed });
  for (const what of [
    'whole way: plan',
    'back and front knitted to the shoulders',
    'front shoulders held against the back',
    'a cap held against the armholes',
    'a dropped sleeve held against its armhole',
    'shape raglan',
    'work row',
    'do: neck edge at the left',
    'where: bust dart',
    'drawn: neck',
    'drawn: cap',
    'drawn: drop shoulder',
    'drawn: raglan',
    'drawn: yoke',
    'drawn: stepped shoulders',
    'drawn level held against its rows',
    'stitches set aside of a sleeve',
    'stitches set aside of all',
    'yarn by swatch',
    'yarn by balls',
    'yarn held against every stitch of a garment',
    'figure held: check: shoulder drop',
    'figure held: check: length to the shoulder',
    'figure held: note: sleeves changed, counted in',
  ])
    expect([what, (met.get(what) ?? 0) > 0]).toEqual([what, true]);
}, 180_000);
