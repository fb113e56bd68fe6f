/** Likely answers and stand-ins, by the names that flow files use. The first of a list is the default. */
import { easeAmount } from '../fit/ease.ts';
import { chooseSize } from '../fit/size.ts';
import { targetsFor } from '../fit/targets.ts';
import { cm, formatDecimal, formatLength, inches } from '../fit/units.ts';
import { usual } from '../fit/usual.ts';
import { valueGiven } from '../flow/answer.ts';
import type { Sheet, Suggestion } from '../flow/calculations.ts';
import { bodyKnown, fitOf } from './body-known.ts';
import { samplePattern, sampleSize } from './figures.ts';
import { ledger } from './ledger.ts';
import { ownGauges, patternOf } from './pattern-of.ts';
import { fixedChoice, lengthOn, type Suggest, type Suggestions, table } from './suggest.ts';
import { topSuggestions } from './suggestions-tops.ts';
import { wedgeSuggestions } from './suggestions-wedges.ts';

const nothing: Suggest = () => [];

export const SUGGESTIONS: Suggestions = {
  ...wedgeSuggestions(() => SUGGESTIONS),
  ...topSuggestions(() => SUGGESTIONS),
  nothing,
  centimetres: fixedChoice('cm', 'the unit of most tapes'),
  unwashed: fixedChoice('unwashed', 'to be on the safe side'),
  'swatch like the body': (sheet) => {
    const flat =
      sheet.answers.pattern?.given === 'value' && patternOf(ledger(sheet, SUGGESTIONS))?.body === 'flat';
    return [{ value: { kind: 'choice', choice: flat ? 'flat' : 'round' }, from: 'as the body is knitted' }];
  },
  'womens table': fixedChoice('women', 'the widest table'),
  'waist at the sides': fixedChoice('sides', 'the usual way'),
  'set-in sleeves': fixedChoice('set_in', 'a common way'),
  'band picked up': fixedChoice('stitches', 'a common way'),
  'no sleeves': fixedChoice('none', 'on the safe side'),
  'another yarn': fixedChoice('other', 'the commonest question'),
  'four at each end': () => [{ value: { kind: 'number', count: 4 }, from: 'a common distance' }],
  'flat both edges': fixedChoice('flat', 'a common way'),
  'no stitches': () => [{ value: { kind: 'stitches', count: 0 }, from: 'none' }],
  'any count': () => [{ value: { kind: 'multiple', multiple: 1, plus: 0 }, from: 'no repeat' }],
  'no rows': () => [{ value: { kind: 'rows', count: 0 }, from: 'none' }],
  'classic fit': fixedChoice('classic', 'the middle of the fits'),
  'hem round': fixedChoice('up_round', 'a common way'),
  'cuff flat': fixedChoice('up_flat', 'a common way'),
  sample: fixedChoice('sample_round', 'our sample sweater'),
  'usual changes': () => [
    { value: { kind: 'choices', choices: ['sleeve', 'length', 'waist'] }, from: 'the commonest changes' },
  ],
  'pattern gauge': (sheet) => {
    const given = valueGiven(sheet.answers, 'pattern_gauge', 'gauge');
    if (given !== undefined) return [{ value: given, from: "the pattern's" }];
    const sample = samplePattern(ledger(sheet, SUGGESTIONS));
    return sample === undefined ? [] : [{ value: { kind: 'gauge', ...sample.gauge }, from: "the pattern's" }];
  },
  'own gauge': (sheet) => {
    const given = valueGiven(sheet.answers, 'gauge', 'gauge');
    if (given !== undefined) return [{ value: given, from: 'your own' }];
    const stitches = valueGiven(sheet.answers, 'swatch_stitches', 'stitch gauge')?.stitches;
    const rows = valueGiven(sheet.answers, 'swatch_rows', 'row gauge')?.rows;
    return stitches === undefined || rows === undefined
      ? []
      : [{ value: { kind: 'gauge', stitches, rows }, from: 'your own' }];
  },
  'bust as upper bust': (sheet) => {
    const bust = valueGiven(sheet.answers, 'bust', 'length');
    return bust === undefined ? [] : [{ value: bust, from: 'the same as the bust' }];
  },
  'usual hip': table('hip'),
  'usual upper arm': table('upper arm'),
  'usual wrist': table('wrist'),
  'usual cross back': table('cross back'),
  'usual armhole depth': table('armhole depth'),
  'usual back length': table('back length'),
  'usual arm length': table('arm length'),
  'usual sleeve': (sheet) => {
    const printed = sampleSize(ledger(sheet, SUGGESTIONS))?.size.finished['sleeve length'];
    const pattern = printed === undefined ? [] : [lengthOn(sheet, printed, "the pattern's")];
    const arm = valueGiven(sheet.answers, 'arm_length', 'length');
    const own =
      arm === undefined
        ? table('arm length')(sheet)
        : [lengthOn(sheet, arm.cm, 'your arm, underarm to wrist')];
    return [...own, ...pattern];
  },
  'usual body': (sheet) => {
    const printed =
      sampleSize(ledger(sheet, SUGGESTIONS))?.size.finished['body length'] ??
      valueGiven(sheet.answers, 'p_body_length', 'length')?.cm;
    return printed === undefined ? [] : [lengthOn(sheet, printed, "the pattern's")];
  },
  'waist ease': (sheet) => {
    const { aim } = easeAmount('waist', fitOf(sheet));
    const { value, from } = lengthOn(sheet, aim, 'common practice for this fit');
    return value.kind === 'length' ? [{ value: { ...value, kind: 'ease' }, from }] : [];
  },
  'usual underarm to waist': (sheet) => {
    const body = bodyKnown(sheet);
    const back = body.known['back length'] ?? usual('back length', body)?.value;
    const armhole = body.known['armhole depth'] ?? usual('armhole depth', body)?.value;
    if (back === undefined || armhole === undefined) return [];
    return [lengthOn(sheet, cm(back - armhole), 'back length less armhole depth')];
  },
  'five centimetres': (sheet) => [lengthOn(sheet, sheet.unit === 'cm' ? cm(5) : inches(2), 'a common depth')],
  'bust stitches at the hem': (sheet) => {
    const bust = valueGiven(sheet.answers, 'p_bust', 'stitches');
    return bust === undefined ? [] : [{ value: bust, from: 'the same as at the bust' }];
  },
  'sizes ranked': rankedSizes,
  'sizes listed': listedSizes,
  'size at the bust': (sheet) => {
    const bust = valueGiven(sheet.answers, 'blend_bust', 'size');
    return bust === undefined ? [] : [{ value: bust, from: 'the size of the bust' }];
  },
};

/** The sizes as the pattern lists them, each with its finished bust. */
function listedSizes(sheet: Sheet): readonly Suggestion[] {
  const pattern = patternOf(ledger(sheet, SUGGESTIONS));
  return (pattern?.sizes ?? []).map(({ label, finished: { bust } }) => ({
    value: { kind: 'size', label },
    from: bust === undefined ? 'as listed' : `${formatLength(bust, sheet.unit)} around the bust`,
  }));
}

function rankedSizes(sheet: Sheet): readonly Suggestion[] {
  const book = ledger(sheet, SUGGESTIONS);
  const pattern = patternOf(book);
  if (pattern === undefined) return [];
  const all = pattern.sizes.map((s) => ({
    value: { kind: 'size' as const, label: s.label },
    from: 'not compared',
  }));
  const own = ownGauges(book, pattern);
  if (own === undefined) return all;
  const choice = chooseSize(pattern, targetsFor(bodyKnown(sheet), { fit: fitOf(sheet) }).targets, own);
  if (choice.kind !== 'ranked') return all;
  return choice.ranking.map((size) => {
    const bust = size.reasons.find((r) => r.region === 'bust');
    const comes =
      bust === undefined ? '' : `comes out ${formatLength(bust.knitted.value, sheet.unit)} around the bust; `;
    return {
      value: { kind: 'size', label: size.label },
      from: `${comes}price ${formatDecimal(size.price, 1)}`,
    };
  });
}
