/** What a person may type into an interview: answers, odd things, and things meant to break it. */
import type { Button, Message, Reply } from '../../src/dialogue/message.ts';
import type { Chance } from './chance.ts';

/** Answers of every kind, as people write them; most fit some question, none fits all. */
const ANSWERS = [
  '38 in',
  '96.5 cm',
  '96,5',
  '37',
  '92',
  '1,05 m',
  '16',
  '6¼"',
  '6 1/4',
  '5 feet 4',
  '24 sts over 4 in',
  '22 sts and 30 rows = 4"',
  '22/30',
  '10 x 10',
  '30 rows to 10 cm',
  '220',
  '2 in ease',
  '-5 cm',
  'about 40',
  '36 (40, 44, 48) in',
  '32-34-36-38',
  'S M L XL',
  'size 3',
  'multiple of 4 + 2',
  'the second one',
  'all of them',
  'none',
  'women',
  'my own',
  'from the top, flat',
  'a hundred and four stitches',
  'zweiundzwanzig',
  'dec 1 st at each end of every 6th row 5 times',
  '3',
  '0',
  '1000',
  '7.25',
  '½',
] as const;

/** What may be said at any question. */
const COMMANDS = [
  'back',
  'why',
  'how',
  "I don't know",
  'skip',
  'later',
  'help',
  'review',
  'pause',
  'inches',
  'centimetres',
  'units',
  'change bust',
  'change',
  'change nonsense',
  'change size',
  'keep',
  'lesson',
  'UK terms',
  'US terms',
  'another chapter',
  'my sleeves are too tight',
  'where do the buttonholes go',
  'yes',
  'no',
  'workings',
  'key',
] as const;

const LONG = 'k2tog '.repeat(4_000);

/** Nothing that anybody needs to type, all of which somebody will. */
const HOSTILE = [
  '',
  ' ',
  '\n\n\t',
  '\u200b',
  '\u0000',
  '\u202e69 mc',
  '\u200f38\u200f',
  '٣٨ سم',
  '३८',
  '３８ｃｍ',
  '九十六',
  'XXXVIII',
  'NaN',
  'Infinity',
  '-Infinity',
  '1e308',
  '1e-308 cm',
  '1e309 in',
  '9'.repeat(400),
  `${'9'.repeat(20)} sts`,
  '0x26',
  '--5',
  '+-+3',
  '1/0',
  '0/0 in',
  '1/3/5',
  '½½½',
  '-0',
  '38.000000000000000000001',
  '38,5,5',
  'undefined',
  'null',
  '[object Object]',
  '__proto__',
  'constructor',
  'toString',
  '{"given":"value"}',
  '<b>38</b>',
  '<script>alert(1)</script>',
  '**38** _cm_',
  '```38```',
  '[38](https://example.org)',
  '@everyone',
  '<@123456789012345678>',
  '<#1>',
  ':yarn:',
  '🧶',
  '🧶🐑👩🏽‍🦽🏳️‍🌈',
  '3️⃣8️⃣',
  'e\u0301\u0301\u0301\u0301'.repeat(50),
  'ﷺ'.repeat(300),
  LONG,
  '('.repeat(5_000),
  '1 '.repeat(5_000),
  `${'36 (40, 44) '.repeat(600)}in`,
  "'; DROP TABLE answers; --",
  '../../etc/passwd',
  '$(exit 1)',
  '%s%n%d',
  'change '.repeat(300),
  '\ud83e',
  '38 \udc00 cm',
] as const;

/** The next thing said: a button or an example as a rule, the more hostile the temper the less often. */
export function nextSaid(screen: Reply, temper: number, { whole, often, one }: Chance): Message {
  if (often(temper)) return { text: often(0.2) ? spliced(screen, one(HOSTILE), often(0.5)) : one(HOSTILE) };
  if (often(0.04))
    return { text: one(ANSWERS), to: one(['unit', 'bust', 'review', 'no such question', 'constructor']) };
  if (often(0.02)) return { text: one(['start over', 'cancel']) };
  if (often(0.2)) return { text: one(COMMANDS) };
  if (often(0.25)) return { text: one(ANSWERS) };
  if (often(0.15))
    return { text: `${whole(400) / (often(0.5) ? 1 : 4)}${one(['', ' cm', ' in', ' sts', ' rows'])}` };
  return sensible(screen, often(0.5) ? whole(12) : 0);
}

/** A button of the screen, or an answer like its example. Sums that she works herself are left. */
export function sensible(screen: Reply, which: number): Message {
  const buttons = buttonsOf(screen);
  if (screen.reply === 'sum' && which === 0) return { text: 'stop', to: screen.question };
  if (screen.reply === 'tally' && which === 0) return { text: 'plan' };
  const pressed = which === 0 ? undefined : buttons[(which - 1) % Math.max(1, buttons.length)];
  if (screen.reply === 'ask') {
    const text = pressed?.send ?? screen.example;
    return which % 2 === 0 ? { text } : { text, to: screen.question };
  }
  return { text: pressed?.send ?? 'yes' };
}

export function buttonsOf(screen: Reply): readonly Button[] {
  if (screen.reply === 'sum') return screen.help;
  return 'buttons' in screen ? screen.buttons : [];
}

function spliced(screen: Reply, hostile: string, before: boolean): string {
  const example = screen.reply === 'ask' ? screen.example : 'yes';
  return before ? `${hostile} ${example}` : `${example} ${hostile}`;
}
