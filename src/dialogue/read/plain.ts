/**
 * One plain spelling for what keyboards, phones and pasted pages produce: ASCII digits, one kind of dash, quote and
 * space, lower case without accents. A vulgar fraction becomes ` 3⁄4` with the fraction slash (U+2044), which a
 * keyboard's slash is not: '24½' stays apart from '241/2'.
 */
import { normalizeDigits, superSubDigitToAsciiMap, vulgarFractionToAsciiMap } from 'numeric-quantity';

const FRACTION_SLASH = '\u2044';

const SAME: readonly (readonly [RegExp, string])[] = [
  [/[\u2010-\u2015\u2212\u02D7\u2043\uFE58\uFE63\u2796]/g, '-'],
  [/\u2795/g, '+'],
  [/[“”„‟″‶〃״ˮ˝]/g, '"'],
  [/[‘’‚‛′‵ʹʼ´`׳ˈ]/g, "'"],
  [/''/g, '"'],
  [/[×✕✖∗*]/g, 'x'],
  [/[\u2215\u29F8]/g, '/'],
  [/[≈∼]/g, '~'],
  [/[،、]/g, ','],
  [/[٫。]/g, '.'],
  [/؛/g, ';'],
  [/ß/g, 'ss'],
];

/** The plain spelling; of the length of the text within a small factor, whatever was typed. */
export function plain(text: string): string {
  const ascii = normalizeDigits(openFractions(text))
    .replace(/[\uFF01-\uFF5E]/g, (c) => String.fromCharCode(c.charCodeAt(0) - 0xfee0))
    .toLowerCase()
    .normalize('NFD')
    .replace(/\p{M}+/gu, '');
  const unified = SAME.reduce((line, [from, to]) => line.replace(from, to), ascii);
  return (
    unified
      // Zero-width and direction marks; emoji.
      .replace(/\p{Cf}|\p{Extended_Pictographic}|\p{Emoji_Modifier}/gu, '')
      // 'time(s)', 'Masche(n)': the plural in brackets is no size.
      .replace(/(?<=\p{L})\((s|es|n|en)\)/gu, '$1')
      .replace(/[\s\p{Z}]+/gu, ' ')
      .trim()
  );
}

/** '18¾' and '18³⁄₄' both become '18 3⁄4'. */
function openFractions(text: string): string {
  return text
    .replace(/([⁰¹²³⁴-⁹]{1,2})[\u2044/]([₀-₉]{1,2})/g, (_, over: string, under: string) => {
      return ` ${lowered(over)}${FRACTION_SLASH}${lowered(under)} `;
    })
    .replace(/[¼½¾⅐-⅞]/g, (c) => {
      const written: string | undefined =
        vulgarFractionToAsciiMap[c as keyof typeof vulgarFractionToAsciiMap];
      return written === undefined ? c : ` ${written.replace('/', FRACTION_SLASH)} `;
    });
}

function lowered(digits: string): string {
  return [...digits]
    .map((d) => superSubDigitToAsciiMap[d as keyof typeof superSubDigitToAsciiMap] ?? d)
    .join('');
}
