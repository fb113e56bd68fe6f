/**
 * A sheet as PDF, tagged so that it can be listened to. Nothing in it depends on when or where it is made: the same
 * sheet gives the same bytes.
 */
import PDFDocument from 'pdfkit';
import type { PathShape, Shape, TextShape } from '../draw/drawing.ts';
import { WEIGHTS } from '../draw/font.ts';
import { LINES, PALETTES } from '../draw/palette.ts';
import type { Page, Part, Sheet } from '../sheets/sheet.ts';
import { plainFont } from './plain-font.ts';

const { inks, fills } = PALETTES.light;

type Document = InstanceType<typeof PDFDocument>;

export function pdfOf(sheet: Sheet): Promise<Uint8Array> {
  const at = new Date(`${sheet.date}T00:00:00Z`);
  const doc = new PDFDocument({
    autoFirstPage: false,
    tagged: true,
    lang: 'en',
    displayTitle: true,
    pdfVersion: '1.7',
    // No font to begin with: where it is one of ours too, each label would read its file anew.
    font: '',
    info: {
      Title: sheet.title,
      Creator: 'Easewright',
      Producer: 'Easewright',
      CreationDate: at,
      ModDate: at,
    },
  });
  for (const weight of WEIGHTS) doc.registerFont(weight, plainFont(weight));
  const root = doc.struct('Document');
  doc.addStructure(root);
  for (const page of sheet.pages) {
    doc.addPage({ size: [page.width, page.height], margin: 0 });
    drawPage(doc, root, page);
  }
  root.end();
  return finished(doc);
}

function drawPage(doc: Document, root: PDFKit.PDFStructureElement, page: Page): void {
  for (const part of page.parts) {
    if (part.role === 'Artifact') {
      doc.markContent('Artifact', { type: 'Pagination' });
      drawAll(doc, part.shapes);
      doc.endMarkedContent();
    } else root.add(structured(doc, part));
  }
}

function structured(doc: Document, part: Part): PDFKit.PDFStructureElement {
  const options = part.alternative === undefined ? {} : { alt: part.alternative };
  return doc.struct(part.role, options, () => drawAll(doc, part.shapes));
}

function drawAll(doc: Document, shapes: readonly Shape[]): void {
  for (const shape of shapes) {
    if (shape.shape === 'path') path(doc, shape);
    else label(doc, shape);
  }
}

function path(doc: Document, { points, closed, line, fill }: PathShape): void {
  const [first, ...rest] = points;
  if (first === undefined) return;
  const trace = () => {
    doc.moveTo(first.x, first.y);
    for (const p of rest) doc.lineTo(p.x, p.y);
    if (closed) doc.closePath();
  };
  if (fill !== null) {
    trace();
    doc.fill(fills[fill]);
  }
  if (line === null) return;
  const style = LINES[line];
  trace();
  doc.lineWidth(style.width * PRINTED).lineJoin('round');
  if (style.dash === null) doc.undash();
  else doc.dash(style.dash[0] ?? 1, { space: style.dash[1] ?? 1 });
  doc.stroke(inks[style.ink]);
}

/** Lines on paper are finer than on a screen. */
const PRINTED = 0.7;

function label(doc: Document, { text, x, y, size, weight, anchor, ink }: TextShape): void {
  doc.font(weight).fontSize(size).fillColor(inks[ink]);
  const width = anchor === 'start' ? 0 : doc.widthOfString(text);
  const left = { start: x, middle: x - width / 2, end: x - width }[anchor];
  doc.text(text, left, y, { lineBreak: false, baseline: 'alphabetic' });
}

function finished(doc: Document): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    const chunks: Uint8Array[] = [];
    doc.on('data', (chunk: Uint8Array) => chunks.push(chunk));
    doc.on('error', reject);
    doc.on('end', () => resolve(new Uint8Array(Buffer.concat(chunks))));
    doc.end();
  });
}
