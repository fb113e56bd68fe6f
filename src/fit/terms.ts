/** Terms of the trade as they are said in the United States and in the United Kingdom. Written in texts as [bind off]. */
import type { Worked } from './words.ts';

export const DIALECTS = ['us', 'uk'] as const;
export type Dialect = (typeof DIALECTS)[number];

const TERMS: Readonly<Record<string, Readonly<Record<Dialect, string>>>> = {
  'bind off': { us: 'bind off', uk: 'cast off' },
  'Bind off': { us: 'Bind off', uk: 'Cast off' },
  'bound off': { us: 'bound off', uk: 'cast off' },
  gauge: { us: 'gauge', uk: 'tension' },
  Gauge: { us: 'Gauge', uk: 'Tension' },
  stockinette: { us: 'stockinette', uk: 'stocking stitch' },
  'seed stitch': { us: 'seed stitch', uk: 'moss stitch' },
  'wrap and turn': { us: 'wrap and turn', uk: 'wrap and turn' },
};

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
