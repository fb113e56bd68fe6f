/** A PDF read back by a library that had no part in writing it. */
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { TextItem } from 'pdfjs-dist/types/src/display/api.d.ts';

export interface ReadPage {
  readonly width: number;
  readonly height: number;
  /** Lines of text from the top down, each from left to right, non-breaking blanks as blanks. */
  readonly lines: readonly string[];
  /** The tags of its structure with their texts, in reading order. */
  readonly tags: readonly { readonly role: string; readonly text: string; readonly alternative: string }[];
}

export interface ReadPdf {
  readonly title: string;
  readonly pages: readonly ReadPage[];
}

export async function readPdf(bytes: Uint8Array): Promise<ReadPdf> {
  const task = getDocument({ data: bytes.slice(), verbosity: 0 });
  const pdf = await task.promise;
  const { info } = await pdf.getMetadata();
  const pages: ReadPage[] = [];
  for (let n = 1; n <= pdf.numPages; n++) {
    const page = await pdf.getPage(n);
    const [, , width = 0, height = 0] = page.view;
    const content = await page.getTextContent({ includeMarkedContent: true });
    const tree = await page.getStructTree();
    pages.push({
      width,
      height,
      lines: linesOf(content.items),
      tags: tagsOf(tree, textsById(content.items)),
    });
  }
  await task.destroy();
  return { title: 'Title' in info ? String(info.Title) : '', pages };
}

type Items = readonly (TextItem | { readonly type: string; readonly id?: string })[];

function linesOf(items: Items): string[] {
  const lines = new Map<number, { x: number; text: string }[]>();
  for (const item of items) {
    if (!('str' in item) || item.str === '') continue;
    const y = Math.round(Number(item.transform[5]));
    lines.set(y, [...(lines.get(y) ?? []), { x: Number(item.transform[4]), text: item.str }]);
  }
  return [...lines.entries()]
    .sort(([a], [b]) => b - a)
    .map(([, parts]) =>
      plain(
        parts
          .sort((a, b) => a.x - b.x)
          .map((p) => p.text)
          .join(' '),
      ),
    );
}

function textsById(items: Items): Map<string, string> {
  const texts = new Map<string, string>();
  const open: string[] = [];
  for (const item of items) {
    if ('str' in item) {
      const id = open.at(-1);
      if (id !== undefined) texts.set(id, `${texts.get(id) ?? ''}${item.str} `);
    } else if (item.type === 'endMarkedContent') open.pop();
    else open.push(item.id ?? '');
  }
  return texts;
}

interface TreeNode {
  readonly role?: string;
  readonly alt?: string;
  readonly id?: string;
  readonly children?: readonly TreeNode[];
}

function tagsOf(tree: TreeNode | null, texts: ReadonlyMap<string, string>): ReadPage['tags'][number][] {
  if (tree === null) return [];
  const own = ['H1', 'H2', 'P', 'Figure'].includes(tree.role ?? '')
    ? [{ role: tree.role ?? '', text: plain(textIn(tree, texts)), alternative: tree.alt ?? '' }]
    : [];
  return [...own, ...(tree.children ?? []).flatMap((child) => tagsOf(child, texts))];
}

function textIn(node: TreeNode, texts: ReadonlyMap<string, string>): string {
  const own = node.id === undefined ? '' : (texts.get(node.id) ?? '');
  return own + (node.children ?? []).map((child) => textIn(child, texts)).join('');
}

function plain(text: string): string {
  return text.replace(/\s+/g, ' ').trim();
}
