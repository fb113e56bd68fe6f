/** The words of a wish, brought to one form each, so that 'my sleeves are tighter' and 'tight sleeve' say the same. */
import { phraseOf } from './read/phrase.ts';

/** Words that tell no wish from another. */
const LITTLE = new Set(
  `a about am an and are as at be because been but by can cannot cant could did do does dont else even every for from get gets got
  had has have having he help her here him his how i id if ill im in into is isnt it its just let like made make makes me mine much my need
  needs next of on one or our out over please quite really rather she should so some somebody than that the their them
  then there these they thing this to too try trying up us use using very want wants was way we what when where which while
  who why will with would you your sweater jumper pullover cardigan garment knit knitting knitted seem seems look looks
  come comes came go goes going still now something someone bit little tell know`.split(/\s+/),
);

/** Words that mean the same here, the first of each line standing for all. */
const SAME: readonly (readonly string[])[] = [
  ['gauge', 'tension'],
  ['tight', 'narrow', 'snug', 'small', 'smaller', 'squeeze', 'pinch', 'clingy', 'skinny'],
  ['loose', 'wide', 'big', 'bigger', 'large', 'baggy', 'huge', 'oversized', 'slack', 'roomy', 'enormous'],
  ['sleeve', 'arm', 'forearm', 'biceps', 'wrist', 'cuff'],
  ['underarm', 'armpit'],
  ['armhole', 'armscye'],
  ['neck', 'neckline', 'collar', 'throat', 'nape', 'neckband'],
  ['back', 'behind', 'backward', 'rear'],
  ['front', 'frontal'],
  ['bust', 'chest', 'breast', 'boob', 'bosom'],
  ['belly', 'stomach', 'tummy', 'abdomen'],
  ['hip', 'bottom', 'bum', 'backside', 'thigh'],
  ['body', 'torso', 'trunk'],
  ['hem', 'welt'],
  ['hole', 'gap', 'gape'],
  ['long', 'length', 'lengthen', 'longer'],
  ['short', 'shorten', 'shorter', 'cropped'],
  ['deep', 'depth', 'deeper', 'low', 'lower'],
  ['shallow', 'high', 'higher'],
  ['slope', 'sloping', 'sloped', 'slant'],
  ['yarn', 'wool', 'thread'],
  ['ball', 'skein', 'hank'],
  ['rip', 'frog', 'unravel', 'undo'],
  ['stitch', 'st', 'sts'],
  ['row', 'round', 'rnd'],
  ['increase', 'inc', 'add'],
  ['decrease', 'dec', 'k2tog', 'reduce'],
  ['wrong', 'error', 'mistake', 'errata', 'erratum', 'contradict'],
  ['pattern', 'instruction', 'design'],
  ['measure', 'measurement', 'tape'],
  ['wash', 'block'],
  ['button', 'buttonhole'],
  ['half', 'halfway', 'middle', 'midway'],
  ['ripple', 'buckle', 'pucker', 'bunch', 'wavy'],
  ['rise', 'ride', 'rode', 'creep', 'hike', 'lift'],
  ['figure', 'number', 'count', 'maths', 'math'],
];

const STANDS_FOR: ReadonlyMap<string, string> = new Map(
  SAME.flatMap(([first = '', ...others]) => [first, ...others].map((word) => [stem(word), stem(first)])),
);
const LITTLE_STEMS = new Set([...LITTLE].map(stem));

/** Every figure is the same word: how many stitches it is does not tell the wish. */
const FIGURE = '#';
/** A figure before one of these is a length, which any wish may name. */
const UNITS = new Set('cm mm in inch inches centimetres centimeters " %'.split(' '));

/** Each word once; empty where nothing in the text tells a wish. */
export function wordsOfWish(text: string): ReadonlySet<string> {
  const words = phraseOf(text)
    .replaceAll("'", '')
    .split(' ')
    .map((word) => (/^\p{N}/u.test(word) ? FIGURE : word))
    .filter((word, i, all) => !(word === FIGURE && UNITS.has(all[i + 1] ?? '')) && !UNITS.has(word))
    .filter((word) => word !== '' && !LITTLE.has(word))
    .map(stem)
    .filter((word) => !LITTLE_STEMS.has(word));
  return new Set(words.map((word) => STANDS_FOR.get(word) ?? word));
}

/** The word without what its number, its time or its comparison adds; too short a rest is left alone. */
function stem(word: string): string {
  const cut = [/(?<=s|x|ch|sh)es$/, /(?<!s)s$/, /ing$/, /ed$/, /er$/, /en$/, /ly$/].reduce((w, ending) => {
    const short = w.replace(ending, '');
    return short.length >= 3 ? short : w;
  }, word);
  return cut.replace(/(?<=..)([^aeiouls])\1$/, '$1').replace(/(?<=...)e$/, '');
}
