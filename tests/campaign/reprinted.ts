/** A printed pattern at another gauge, in mixed sizes and in the trade's own words, knitted as it then reads. */
import { printedArmhole } from '../../src/fit/armhole-printed.ts';
import { blend } from '../../src/fit/blend.ts';
import type { Counted, Pattern } from '../../src/fit/pattern.ts';
import { regauge } from '../../src/fit/regauge.ts';
import { SAMPLE_PIECES, SAMPLE_ROUND } from '../../src/fit/sample.ts';
import { readShapingLine } from '../../src/fit/shaping-line.ts';
import { lineForSize } from '../../src/fit/shaping-size.ts';
import type { Spaced } from '../../src/fit/spacing.ts';
import { rows, stitches } from '../../src/fit/units.ts';
import { edgeOf, knitEdges } from '../simulator/edges.ts';
import { knitSection } from '../simulator/garment.ts';
import { Needle } from '../simulator/needle.ts';
import type { Findings } from './findings.ts';
import { waysOut } from './knit-body.ts';
import type { Sweater } from './sweaters.ts';

/** The sample pattern in one size at the sweater's gauge: its back to the shoulders, its counts and widths. */
export function knitAtOwnGauge({ body, toss }: Sweater, findings: Findings): void {
  findings.at('sample at another gauge');
  const pattern = body.worked === 'round' ? SAMPLE_ROUND : SAMPLE_PIECES;
  const made = regauge(pattern, sizeFor(toss[0]), body);
  findings.workings(made.workings);
  const count = (place: Counted): number => made.size.counts[place] ?? Number.NaN;
  const [seams, pieces] = body.worked === 'round' ? [0, 2] : [2, 1];
  for (const figure of made.counts) {
    const edge = edgeAt(figure.place, pattern, seams);
    findings.near(
      figure.width,
      (figure.stitches - edge) / body.stitches.perCm,
      `width at the ${figure.place}`,
    );
  }
  for (const figure of made.rows)
    findings.near(
      figure.lengthUnchanged,
      figure.pattern / body.rows.perCm,
      `rows of the ${figure.stretch} unchanged`,
    );
  findings.same(count('cross back'), 2 * count('shoulder') + count('back neck'), 'shoulders and back neck');
  findings.same(0, (count('upper arm') - count('wrist')) % 2, 'stitch over from wrist to upper arm');
  const { armhole: loss, rows: stretches } = made.size;
  if (
    !findings.must(loss !== undefined && stretches?.armhole !== undefined, 'no armhole') ||
    loss === undefined
  )
    return;
  findings.states({ boundOff: loss.boundOff, decreased: loss.decreased }, made.workings);
  const back = stitches(count('bust') / pieces);
  const printed = printedArmhole({
    bust: back,
    bindOffs: [loss.boundOff],
    decreases: [{ every: rows(2), times: loss.decreased }],
    rows: stretches?.armhole ?? rows(0),
    gauge: { ...body, worked: 'flat' },
  });
  findings.meet(`sample: ${printed.kind}`);
  if (printed.kind === 'does not come out') {
    findings.must(printed.lastShapingRow > printed.rows, 'an armhole that would come out');
    return;
  }
  const needle = findings.knit(() => knitEdges(back, printed.events, stretches?.armhole ?? 0));
  findings.same(count('cross back'), needle?.count, 'cross back');
  findings.near(
    printed.edge,
    edgeOf(printed.events, stretches?.armhole ?? 0, body.stitches.perCm, body.rows.perCm),
    'armhole edge',
  );
}

function sizeFor(toss = 0): string {
  return String(1 + Math.floor(10 * toss));
}

/** Edge stitches that a count holds: of a flat back both, of a part of it none. */
function edgeAt(place: Counted, pattern: Pattern, seams: number): number {
  if (['wrist', 'sleeve cast-on', 'upper arm'].includes(place)) return pattern.edge.sleeves;
  return ['back neck', 'shoulder', 'cap top'].includes(place) ? 0 : seams;
}

/** Shoulders of one size, bust of another, hip of a third. */
export function knitBlend({ body, toss }: Sweater, findings: Findings): void {
  findings.at('sizes mixed');
  const pattern = body.worked === 'round' ? SAMPLE_ROUND : SAMPLE_PIECES;
  const [shoulders, bust, hip, sleeves] = [1, 2, 3, 4].map((i) => sizeFor(toss[i])) as [
    string,
    string,
    string,
    string,
  ];
  const made = blend(pattern, { shoulders, bust, hip, sleeves });
  findings.meet(`mixed: ${made.kind}`);
  if (made.kind !== 'blended') return;
  findings.workings(made.workings);
  for (const { between, from, to, spacing } of made.passages) {
    const across = between === 'underarm and cross back';
    const worked = across ? 'flat' : body.worked;
    const fabric = { gauge: { ...body, worked }, edge: 2, pieces: 1 as const };
    waysOut(spacing, fabric, findings);
    if (spacing.kind !== 'spaced') continue;
    const needle = Needle.castOn(from, worked);
    for (const fault of findings.knit(() => knitSection(needle, spacing, worked)) ?? [])
      findings.must(false, fault);
    findings.same(to, needle.count, `stitches after ${between}`);
  }
}

/** A spacing in the trade's words, for one of three sizes, read back into the rows that it came from. */
export function readBack(spaced: Spaced, { toss }: Sweater, findings: Findings): void {
  if (spaced.shaping.length === 0 || spaced.base !== 0) return;
  findings.at('shaping line').meet('shaping line read back');
  const position = Math.floor(3 * (toss[5] ?? 0));
  const verb = spaced.to > spaced.from ? 'inc' : 'dec';
  const runs = spaced.runs.map(
    ({ every, times }) =>
      `every ${every === 1 ? '' : `${nth(every)} `}row ${forSizes(times, position)} times`,
  );
  const printed = `${verb} 1 st at each end of ${runs.join(', then ')}`;
  const line = lineForSize(printed, position);
  if (
    !findings.must(line.kind === 'line', `'${printed}' has no line for size ${position}`) ||
    line.kind !== 'line'
  )
    return;
  const read = readShapingLine({ text: line.text, start: spaced.from, end: spaced.to });
  if (!findings.must(read.kind === 'read', `'${line.text}' cannot be read`) || read.kind !== 'read') return;
  const [reading] = read.readings;
  const said = (shaping: readonly { readonly row: number; readonly after?: number }[]) =>
    shaping.map(({ row, after }) => `${row}:${after}`).join();
  findings.same(said(spaced.shaping), said(reading?.shaping ?? []), `rows of '${line.text}'`);
  findings.same('adds up', reading?.check.kind, `end of '${line.text}'`);
  findings.workings(reading?.workings ?? []);
}

/** The figure among those of two other sizes. */
function forSizes(figure: number, position: number): string {
  const [first, ...rest] = [0, 1, 2].map((i) => figure + (i === position ? 0 : i + 1));
  return `${first}(${rest.join(':')})`;
}

function nth(n: number): string {
  const teen = n % 100 >= 11 && n % 100 <= 13;
  return `${n}${teen ? 'th' : (['th', 'st', 'nd', 'rd'][n % 10] ?? 'th')}`;
}
