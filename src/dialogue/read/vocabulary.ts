/**
 * The words that readers know, by meaning, in plain spelling (lower case, no accents). English, with the German, French
 * and Nordic terms met in patterns. A short form may have several meanings ('m': Maschen, metres, months); a reader
 * asks for the one that fits its question.
 */
const LISTS = {
  inch: 'in ins inch inches zoll pouce pouces tum tommer "',
  cm: 'cm cms centimetre centimetres centimeter centimeters zentimeter',
  mm: 'mm millimetre millimetres millimeter millimeters',
  metre: 'm metre metres meter meters mtr mtrs',
  foot: "ft foot feet fuss pied pieds '",
  yard: 'yd yds yard yards',
  stitch:
    'st sts stitch stitches stich stiches s m ma masche maschen maille mailles masker maskor steken puntos maglie',
  row: 'row rows r rnd rnds rd rds round rounds reihe reihen runde runden rang rangs rg rgs tour tours pinde pinner varv omg toeren vueltas ferri giri',
  'stitches per inch': 'spi',
  'rows per inch': 'rpi',
  times: 'time times x mal fois',
  month: 'mo mos mth mths month months m monat monate monaten mois',
  year: 'y yr yrs year years yo jahr jahre jahren an ans',
  gram: 'g gr gm gms gram grams gramme grammes gramm',
  ounce: 'oz ounce ounces',
  kilogram: 'kg kgs kilo kilos kilogram kilograms',
  pound: 'lb lbs pound pounds',
  'worsted count': 'worsted nw wc nek',
  'cotton count': 'cotton ne nec ecc',
  'metric count': 'nm metric',
  'another count': 'linen lea nel woollen woolen ysw nes tex dtex den denier',
  strand: 'strand strands end ends thread threads',
  ball: 'ball balls skein skeins hank hanks cake cakes knauel strang strange pelote pelotes',
  needle: 'needle needles nadel nadeln aiguille aiguilles ndl ndls hook circular circulars dpn dpns',
  per: 'per / over to auf sur pro par pour each',
  article: 'a an the each',
  approximate:
    '~ about approx approximately around ca circa roughly nearly almost barely just short ungefahr fast environ presque',
  every: 'every each ev jede jeder jedes jeden alle chaque les',
  following: 'foll folls following next nachste nachsten folgende folgenden suivant suivants suivante',
  other: 'other alt alternate alternating 2nd second',
  more: 'more further additional weitere weiteren mehr encore',
  longer:
    'longer wider larger bigger more deeper taller looser higher add lengthen plus positive extra langer weiter grosser',
  shorter:
    'shorter narrower smaller less shallower tighter lower closer off minus negative fewer shorten remove kurzer enger kleiner',
} as const;

export type Meaning = keyof typeof LISTS;

const WORDS: ReadonlyMap<Meaning, ReadonlySet<string>> = new Map(
  Object.entries(LISTS).map(([meaning, words]) => [meaning as Meaning, new Set(words.split(' '))]),
);

/** Whether a word (or a mark, as in 12") can have this meaning. */
export function means(word: string, meaning: Meaning): boolean {
  return word !== '' && WORDS.get(meaning)?.has(word) === true;
}
