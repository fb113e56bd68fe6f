/** The wording of the sentences about bands, buttons and yarn. */
import type { FINISHING_PHRASES } from '../fit/phrases-finishing.ts';

export const FINISHING_WORDING: Readonly<Record<(typeof FINISHING_PHRASES)[number], string>> = {
  'summary: picked up': 'A band of {count} along your edge.',
  'where: the band': 'The stitches of the band',
  'check: band as long as the edge':
    'the edge is {edge} long, and the band must lie along it without pulling or waving.',
  'note: the ratio alone': 'The rule of thumb alone would give {count}: the exact count is used here.',
  'note: sloping edges take more':
    'This is for a straight edge. A sloping one is longer than its rows, so pick up a few more there. Take about four in five where a straight one takes three in four.',
  'note: one in each bound-off stitch':
    'Along stitches that were [bound off] or cast on, pick up one in each.',
  'summary: buttonholes': 'Places for {count#} buttonholes.',
  'where: the buttonholes': 'The buttonholes',
  'note: gaps alike': 'Between two buttonholes lie {gap}.',
  'note: gaps nearly alike': 'Between two buttonholes lie {gap}, and one more in {longer#} of the gaps.',
  'cannot: no room for buttonholes':
    'The band has {length}, and {count#} buttonholes with their ends and a gap between each two need at least {needed}.',
  'instead: fewer buttons': 'At most {most#} go in.',
  'instead: a longer band': 'Make the band {needed} long.',
  'summary: yarn': 'Yarn for the sweater, in whole balls.',
  'where: the yarn': 'The yarn',
  'do: yarn it takes': 'It takes about {amount}, and {more} with a margin.',
  'do: yarn it takes bare': 'It takes about {amount}. A margin comes on top.',
  'do: balls to buy': 'Balls to buy: {balls#}.',
  'note: margin of yarn': 'A tenth is added for joins, seams and second tries: common practice.',
  'note: same dye lot': 'Buy all of one dye lot. Shops often take whole balls back.',
  'note: area is reckoned roughly':
    'The area is reckoned from a straight body and two tapered sleeves. Cables, bands and collars take more.',
  'note: area of the pieces':
    'The area is that of the pieces up to the shoulders. What the neck takes away, its band adds again. Cables and collars take more.',
  'note: tops are reckoned as printed':
    "The area is that of the pieces up to the shoulders. Where you still have to choose, the pattern's armholes and caps are reckoned. Cables and collars take more.",
  'note: tops are reckoned straight':
    'From the underarms up the body is reckoned straight: what armholes and neck take away, sleeve caps and the neckband add again. Cables and collars take more.',
  'note: yarn of the pattern as printed':
    'This is the yarn of the pattern as printed. What you make longer or wider takes more, and what you make smaller takes less.',
  'summary: yarn lasts': 'The yarn lasts.',
  'summary: yarn runs short': 'The yarn runs short.',
  'do: rows that it gives':
    'The yarn that is left gives {rows}, with the yarn of {kept} kept back to [bind off].',
  'do: it lasts': 'You need {wanted}, so {over} can be added.',
  'do: it runs short':
    'You need {wanted}: {short} cannot be had, and about {amount} more would be wanted for them.',
  'do: less than is kept back':
    'The yarn that is left gives no more rows: it is less than {kept} take, and so much is kept back to [bind off]. You need {wanted} before it, so about {amount} more would be wanted.',
  'note: sleeves change as the body does': 'The sleeves are taken to change by the same share as the body.',
  'note: denser stitches take more':
    'Yarn goes by length: more stitches to the same width take a longer yarn, fewer a shorter one.',
  'do: the rest takes': 'The rest takes about {needed}, margin included.',
  'do: rest lasts': 'You have {left}, so about {over} will be over.',
  'do: rest of the body':
    'You have {left}: about {short} more would be wanted. What you have is enough for {length} more of the body.',
  'do: rest in percent':
    'You have {left}: about {short} more would be wanted. What you have is enough for {share#} % of the rest.',
  'cannot: more knitted than there is': '{done} of the body are done, and it is {length} long in all.',
  'cannot: nothing knitted yet': 'Nothing is knitted yet, so that nothing tells what the rest takes.',
  'instead: weigh a swatch': 'Knit a swatch, weigh it, and ask how much a sweater takes from it.',
  'note: rows kept back':
    'To [bind off] plainly takes the yarn of one to two rows. A stretchy edge can take two or three times as much: then keep more back.',
  'note: weigh again near the end':
    'Weigh again after a few rows. Scales that show whole grams are off by a row or more near the end.',
  'note: wider rows take more': 'Where the piece grows wider, each row takes more.',
};
