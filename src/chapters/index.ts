/** The names that flow files may use, with what they stand for. */
import type { Calculations } from '../flow/calculations.ts';
import { armholeResult } from './armhole.ts';
import { buttonsResult, pickupResult } from './bands.ts';
import { blendResult } from './blend.ts';
import { bodyResult, easeResult } from './body.ts';
import { bustResult } from './bust.ts';
import { checkingResult } from './checking.ts';
import { frontNeckResult } from './front-neck.ts';
import { hemResult } from './hem.ts';
import { backNeckResult } from './neck-wedges.ts';
import { raglanResult } from './raglan.ts';
import { readingResult } from './reading.ts';
import { recheckResult } from './recheck.ts';
import { regaugeResult } from './regauge.ts';
import { shoulderResult } from './shoulder.ts';
import { garmentResult, sizeResult } from './size.ts';
import { spacingResult } from './spacing.ts';
import { spreadResult } from './spread.ts';
import { stitchesResult } from './stitches.ts';
import { SUGGESTIONS } from './suggestions.ts';
import { swatchResult } from './swatch.ts';
import { lengthResult, sleeveResult, waistResult, wholeResult } from './whole.ts';
import { yarnResult } from './yarn.ts';
import { yokeResult } from './yoke.ts';

export const CALCULATIONS: Calculations = {
  results: {
    swatch: swatchResult,
    body: bodyResult,
    ease: easeResult,
    size: sizeResult,
    garment: garmentResult,
    sleeve: sleeveResult,
    length: lengthResult,
    waist: waistResult,
    whole: wholeResult,
    spread: spreadResult,
    hem: hemResult,
    raglan: raglanResult,
    yoke: yokeResult,
    armhole: armholeResult,
    front_neck: frontNeckResult,
    bust: bustResult,
    shoulder: shoulderResult,
    back_neck: backNeckResult,
    spacing: spacingResult,
    recheck: recheckResult,
    pickup: pickupResult,
    buttons: buttonsResult,
    yarn: yarnResult,
    blend: blendResult,
    regauge: regaugeResult,
    checking: checkingResult,
    reading: readingResult,
    stitches: stitchesResult,
  },
  suggestions: SUGGESTIONS,
};
