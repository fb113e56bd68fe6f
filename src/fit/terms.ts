/** Terms of the trade as they are said in the United States and in the United Kingdom. Written in texts as [bind off]. */
import type { Worked } from './words.ts';

export const DIALECTS = ['us', 'uk'] as const;
export type Dialect = (typeof DIALECTS)[number];

const TERMS: Readonly<Record<string, Readonly<Record<Dialect, string>>>> = {
  'bind off': { us: 'bind off', uk: 'cast off' },
  'Bind off': { us: 'Bind off', uk: 'Cast off' },
  'binds off': { us: 'binds off', uk: 'casts off' },
  'binding off': { us: 'binding off', uk: 'casting off' },
  'bound off': { us: 'bound off', uk: 'cast off' },
  'Bound off': { us: 'Bound off', uk: 'Cast off' },
  'bind-off': { us: 'bind-off', uk: 'cast-off' },
  'bind-offs': { us: 'bind-offs', uk: 'cast-offs' },
  gauge: { us: 'gauge', uk: 'tension' },
  Gauge: { us: 'Gauge', uk: 'Tension' },
  stockinette: { us: 'stockinette', uk: 'stocking stitch' },
  'seed stitch': { us: 'seed stitch', uk: 'moss stitch' },
  'wrap and turn': { us: 'wrap and turn', uk: 'wrap and turn' },
};

/** Every term as it is said in the United States, the longest first. */
const US_TERMS = new RegExp(
  `\\b(?:${Object.keys(TERMS)
    .toSorted((a, b) => b.length - a.length)
    .join('|')})\\b`,
  'g',
);

/** Names of figures, which the engine has in US terms and without marks, in the dialect. */
export function namesIn(text: string, dialect: Dialect): string {
  return dialect === 'us' ? text : text.replace(US_TERMS, (term) => TERMS[term]?.[dialect] ?? term);
}

/** Replaces [terms] by the words of the dialect, and [row] or [rows] by rounds where the piece is knitted in the round. */
export function inDialect(text: string, dialect: Dialect, worked: Worked | null = null): string {
  return text.replace(/\[([^\]]+)\]/g, (_, term: string) => {
    if (term === 'row') return worked === 'round' ? 'round' : 'row';
    if (term === 'rows') return worked === 'round' ? 'rounds' : 'rows';
    const said = TERMS[term];
    if (said === undefined) throw new Error(`the text uses [${term}], which is not among the terms`);
    return said[dialect];
  });
}
