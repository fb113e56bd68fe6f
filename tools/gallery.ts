/** Writes every kind of picture and sheet for the sample sweater into gallery/, with a page that shows them: npm run gallery */
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { THEMES } from '../src/present/draw/palette.ts';
import { svgOf } from '../src/present/draw/svg.ts';
import { wedgePicture } from '../src/present/pictures/of-plan.ts';
import { shapedPicture } from '../src/present/pictures/shaped-picture.ts';
import {
  BLANKS,
  blankSheet,
  MEASURED,
  measuringPicture,
  type Picture,
  picturesOf,
  render,
  sheetOf,
} from '../src/present/pictures.ts';
import type { Sheet } from '../src/present/sheets/sheet.ts';
import {
  sampleCap,
  sampleDart,
  sampleDarts,
  sampleDrop,
  sampleHem,
  sampleNeck,
  samplePlan,
  sampleRaglan,
  sampleShoulders,
  sampleYoke,
} from './sample-garment.ts';

const FOLDER = new URL('../gallery/', import.meta.url);
const VIEW = { unit: 'cm', dialect: 'us' } as const;
const [FLAT, ROUND] = [
  { ...VIEW, worked: 'flat' },
  { ...VIEW, worked: 'round' },
] as const;

const groups: Readonly<Record<string, readonly Picture[]>> = {
  'The plan for the sample sweater': picturesOf(samplePlan(), 'us'),
  'Short rows': [
    wedgePicture(sampleDart(), 'Front: bust dart', VIEW),
    wedgePicture(sampleHem(), 'Back: hem that dips', VIEW),
  ],
  'Cap, dropped shoulder, neck, raglan, yoke, shoulders and darts': [
    shapedPicture(sampleCap(), 'The cap and its armhole', FLAT),
    shapedPicture(sampleDrop(), 'The dropped shoulder', FLAT),
    shapedPicture(sampleNeck(), 'The neck', FLAT),
    shapedPicture(sampleRaglan(), 'The raglan lines', ROUND),
    shapedPicture(sampleYoke(), 'The yoke', ROUND),
    shapedPicture(sampleShoulders('both'), 'Shoulders bound off in steps', FLAT),
    shapedPicture(sampleDarts('up'), 'Darts that run up and down', ROUND),
  ],
  'Where to measure': MEASURED.map(measuringPicture),
};

function sheets(): Readonly<Record<string, Sheet>> {
  const options = { project: 'Sample sweater', date: '2025-03-01', dialect: 'us', unit: 'cm' } as const;
  const [a4, letter] = [
    { ...options, paper: 'A4', type: 'normal' },
    { ...options, paper: 'Letter', type: 'large' },
  ] as const;
  const blanks = BLANKS.flatMap((blank): [string, Sheet][] => [
    [`${blank}-a4`, blankSheet(blank, a4)],
    [`${blank}-letter-large`, blankSheet(blank, { ...letter, unit: 'in' })],
  ]);
  return {
    'plan-a4': sheetOf(samplePlan(), a4),
    'plan-letter-large': sheetOf(samplePlan(), letter),
    ...Object.fromEntries(blanks),
  };
}

async function write(name: string, bytes: Uint8Array | string): Promise<void> {
  writeFileSync(new URL(name, FOLDER), bytes);
}

async function writePicture({ name, drawing, characters }: Picture): Promise<void> {
  for (const theme of THEMES) {
    await write(`${name}-${theme}.png`, await render({ make: 'png', drawing, theme, scale: 2 }));
    await write(`${name}-${theme}.svg`, svgOf(drawing, theme));
  }
  await write(`${name}.txt`, `${characters(72)}\n`);
}

/** Words as HTML text. */
function html(words: string): string {
  return words.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');
}

function shown({ name, title, alternative, drawing, characters }: Picture): string {
  const image = (theme: string) =>
    `<img src="${name}-${theme}.png" width="${drawing.width}" alt="${html(alternative)}">`;
  return `<figure>
${THEMES.map(image).join('\n')}
<figcaption><strong>${html(title)}</strong><br>${html(alternative)}</figcaption>
<details><summary>In plain characters</summary><pre>${html(characters(72))}</pre></details>
</figure>`;
}

function page(names: readonly string[]): string {
  const sections = Object.entries(groups).map(
    ([title, pictures]) => `<h2>${html(title)}</h2>\n${pictures.map(shown).join('\n')}`,
  );
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width">
<title>Pictures and sheets</title>
<style>
body { font: 16px/1.5 sans-serif; margin: 1rem auto; max-width: 60rem; padding: 0 1rem; color: #1a1a1a; background: #fff }
figure { margin: 1rem 0 2.5rem; border-top: 1px solid #6b6b6b; padding-top: 1rem }
img { max-width: 100%; height: auto; vertical-align: top }
pre { overflow-x: auto }
</style>
</head>
<body>
<h1>Pictures and sheets</h1>
<h2>Sheets to print</h2>
<ul>
${names.map((name) => `<li><a href="${name}.pdf">${name}.pdf</a></li>`).join('\n')}
</ul>
${sections.join('\n')}
</body>
</html>
`;
}

rmSync(FOLDER, { recursive: true, force: true });
mkdirSync(FOLDER);
for (const picture of Object.values(groups).flat()) await writePicture(picture);
const made = sheets();
for (const [name, sheet] of Object.entries(made))
  await write(`${name}.pdf`, await render({ make: 'pdf', sheet }));
await write('index.html', page(Object.keys(made)));
