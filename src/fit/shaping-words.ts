/**
 * The words of a shaping line, US and UK trade wording and the German one, brought down to a few tokens.
 * What is not known is kept as such, so that nothing is ever passed over in silence.
 */

/** A mark that carries meaning for a shaping line. */
export type Mark =
  | 'next'
  | 'following'
  | 'every'
  | 'row'
  | 'rows'
  | 'times'
  | 'more'
  | 'in all'
  | 'then'
  | 'and'
  | 'increase'
  | 'decrease'
  | 'bind off'
  | 'stitches'
  | 'both ends'
  | 'both sides of both markers'
  | 'markers'
  | 'one edge'
  | 'until'
  | 'plain'
  | 'repeat'
  | 'same time'
  | '['
  | ']';

export type Token =
  | { readonly kind: 'mark'; readonly mark: Mark }
  | { readonly kind: 'number'; readonly value: number }
  /** 'fourth', '4th', '4.': the row of that number, or an interval of so many rows. */
  | { readonly kind: 'ordinal'; readonly value: number }
  | { readonly kind: 'unknown'; readonly word: string };

/** Turns of phrase of several words, brought to one word each before the text is cut up. */
const PHRASES: readonly (readonly [RegExp, string])[] = [
  [/\bat (?:the )?same time\b|\bgleichzeitig\b/g, ' SAMETIME '],
  [/\b(?:at |on )?(?:each|both) sides? of both (?:side )?(?:markers?|m)\b/g, ' BOTHMARKERS '],
  [/\b(?:at |on )?(?:each|both) sides? of (?:each |the )?(?:side )?(?:markers?|m)\b/g, ' MARKERS '],
  [
    /\b(?:at |on )?(?:each|both) (?:end|side|edge)s?\b(?: of (?:the )?(?:needle|row|work)\b)?|\bbeidseitig\b|\bbeidseits\b|\ban beiden (?:seiten|rändern|kanten)\b/g,
    ' BOTHENDS ',
  ],
  [
    /\b(?:at |on )?(?:the )?(?:neck|armhole|raglan|front|side|shoulder|seam|same|this|that|one|sleeve)[ -]edge\b/g,
    ' ONEEDGE ',
  ],
  [/\bat (?:the )?(?:beg|beginning|start) of\b|\bam anfang\b/g, ' ONEEDGE '],
  [/\bevery other\b|\beach (?:other|alternate)\b|\bjede[rnms]? zweiten?\b/g, ' EVERY 2ND '],
  [
    /\b(every|each)( foll(?:owing|\.)?)? (?:rs|right[- ]side) (?=rows?\b|rnds?\b|rounds?\b)/g,
    ' EVERY$2 2ND ',
  ],
  [/\b(?:rs|ws|right[- ]side|wrong[- ]side) (?=rows?\b)/g, ' '],
  [/\b(?:cast|bind|bound) off\b|\bb\.?o\.?\b|\babketten\b/g, ' BINDOFF '],
  [/\b(?:for )?(?:a )?total of\b|\bin total\b|\bin all\b|\baltogether\b|\binsgesamt\b/g, ' INALL '],
  [/\b(?:until|till|to|bis|auf)(?: there are| you have)?\b/g, ' UNTIL '],
  [/\bwithout shaping\b|\bohne (?:zu|ab)nahmen?\b/g, ' PLAIN '],
  [/\b(?:alternately|alternating(?: between)?|abwechselnd|im wechsel)\b/g, ' '],
  [/\b(?:k2tog|p2tog|ssk|skpo?)\b/g, ' decrease '],
  [/\btime\(s\)/g, ' times '],
  [/(\d+)\.(?=\s*(?:und\b|u\.|u\b|\+|reihe|r\b|rd|runde))/g, ' $1TH '],
  [/(\d+)(?:st|nd|rd|th)\b(?=.)/g, ' $1TH '],
  [/(\d+)\s*[x×](?=\W|\d|$)/g, ' $1 TIMES '],
  [/(?<=\s)[x×]\s?(\d+)\b/g, ' $1 TIMES '],
  [/\bonce\b/g, ' 1 TIMES '],
  [/\btwice\b|\bzweimal\b/g, ' 2 TIMES '],
];

const MARKS: ReadonlyMap<string, Mark> = new Map(
  (
    [
      ['next', 'next nächsten nächste nächster'],
      ['following', 'foll following folgende folgenden folgender folg'],
      ['every', 'every each jede jeder jeden jedes'],
      ['row', 'row rnd round r reihe rd runde'],
      ['rows', 'rows rnds rounds reihen rds runden'],
      ['times', 'times time mal x ×'],
      ['more', 'more further additional weitere weiteren noch'],
      ['in all', 'inall'],
      ['then', 'then dann danach ; ,'],
      ['and', 'and & + und u'],
      ['increase', 'inc incs increase increases increasing m1 zunehmen zunahme zunahmen zun'],
      ['decrease', 'dec decs decrease decreases decreasing abnehmen abnahme abnahmen abn'],
      ['bind off', 'bindoff'],
      ['stitches', 'st sts stitch stitches masche maschen m'],
      ['both ends', 'bothends'],
      ['both sides of both markers', 'bothmarkers'],
      ['markers', 'markers'],
      ['one edge', 'oneedge'],
      ['until', 'until'],
      ['plain', 'plain even straight'],
      ['repeat', 'rep repeat repeating'],
      ['same time', 'sametime'],
      ['[', '[ ( {'],
      [']', '] ) }'],
    ] as const
  ).flatMap(([mark, words]) => words.split(' ').map((word) => [word, mark] as const)),
);

/** Words without weight for the sum. */
const FILLERS = new Set(
  'on of in the a an at work worked working shape shaping as follows this way for from by with rem remain remaining left are you have knit purl k p sleeve row: . : – -'.split(
    ' ',
  ),
);

const NUMBERS = 'nought one two three four five six seven eight nine ten eleven twelve'.split(' ');
const NUMBERS_GERMAN = 'null eine zwei drei vier fünf sechs sieben acht neun zehn elf zwölf'.split(' ');
const ORDINALS =
  'noughth first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth'.split(' ');

/** Cuts a shaping line into tokens. Numbers of more than three digits are not known: no sweater needs them. */
export function tokens(text: string): readonly Token[] {
  let plain = ` ${text.toLowerCase().replace(/[“”"'’]/g, ' ')} `;
  for (const [phrase, word] of PHRASES) plain = plain.replace(phrase, word);
  const words = plain.toLowerCase().match(/\d+(?:th|nd)|\d+|[a-zäöüß1]+|[^\s\w]/g) ?? [];
  return words.flatMap((word): Token[] => {
    const mark = MARKS.get(word);
    if (mark !== undefined) return [{ kind: 'mark', mark }];
    if (FILLERS.has(word)) return [];
    if (/^\d{4,}/.test(word)) return [{ kind: 'unknown', word }];
    if (/^\d+$/.test(word)) return [{ kind: 'number', value: Number(word) }];
    if (/^\d/.test(word)) return [{ kind: 'ordinal', value: Number.parseInt(word, 10) }];
    if (word === 'alt' || word === 'alternate') return [{ kind: 'ordinal', value: 2 }];
    const number = Math.max(NUMBERS.indexOf(word), NUMBERS_GERMAN.indexOf(word));
    if (number >= 0) return [{ kind: 'number', value: number }];
    const ordinal = ORDINALS.indexOf(word);
    if (ordinal >= 0) return [{ kind: 'ordinal', value: ordinal }];
    return [{ kind: 'unknown', word }];
  });
}
