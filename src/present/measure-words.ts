/** What a recheck found of one measure, in words. */
import type { Measure } from '../fit/recheck-measures.ts';
import { cm, formatLength } from '../fit/units.ts';
import type { Reader } from './quantity.ts';

/** 'width at the end: 31 cm, give or take 0.8 cm; 30 cm planned, so 1 cm more. Near enough.' */
export function wordMeasure(measure: Measure, { unit }: Reader): string {
  const { of, level, planned, expected, knitted } = measure;
  const error = formatLength(cm(expected.high - expected.expected), unit);
  const sure = error === `0 ${unit}` ? '' : `, give or take ${error}`;
  const off = formatLength(cm(Math.abs(measure.off)), unit);
  const beside = formatLength(planned, unit);
  const how = off === `0 ${unit}` ? `${beside} planned` : `${beside} planned, so ${off} ${wordOff(measure)}`;
  const place = `${of} ${of === 'width' ? 'at' : 'to'} the ${level}${knitted ? ', knitted already' : ''}`;
  return `${place}: ${formatLength(expected.expected, unit)}${sure}; ${how}. ${verdict(measure)}`;
}

function wordOff({ of, off }: Measure): string {
  if (of === 'width') return off < 0 ? 'narrower' : 'wider';
  return off < 0 ? 'shorter' : 'longer';
}

function verdict({ within, sure }: Measure): string {
  if (!sure)
    return within ? 'Near enough, but too near to tell for sure.' : 'Off, but too near to tell for sure.';
  return within ? 'Near enough.' : 'Off.';
}
