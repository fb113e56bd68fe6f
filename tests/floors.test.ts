import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';

/** Which floors each floor may import from. The top floor is the files that lie in src itself. */
const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  fit: [],
  flow: ['fit'],
  chapters: ['fit', 'flow'],
  dialogue: ['fit', 'flow'],
  present: ['fit'],
  store: ['fit', 'flow', 'dialogue'],
  transport: ['fit', 'flow', 'dialogue', 'present'],
  top: ['fit', 'flow', 'chapters', 'dialogue', 'present', 'store', 'transport'],
};

const SRC = resolve(import.meta.dirname, '../src');
const files = readdirSync(SRC, { recursive: true, encoding: 'utf8' }).filter((f) => f.endsWith('.ts'));

function floorOf(file: string): string {
  const [first, second] = relative(SRC, file).split('/');
  return second === undefined ? 'top' : (first ?? 'top');
}

function importsOf(file: string): string[] {
  const text = readFileSync(join(SRC, file), 'utf8');
  return [...text.matchAll(/(?:from|import\()\s*'(\.[^']+)'/g)].map((m) =>
    resolve(dirname(join(SRC, file)), m[1] ?? ''),
  );
}

describe('the floors of the house', () => {
  it('has every folder of src on a floor', () => {
    expect(files.length).toBeGreaterThan(30);
    expect([...new Set(files.map((f) => floorOf(join(SRC, f))))].filter((f) => !(f in MAY_IMPORT))).toEqual(
      [],
    );
  });

  it('imports point down only', () => {
    const upward = files.flatMap((file) => {
      const floor = floorOf(join(SRC, file));
      return importsOf(file)
        .map((target) => ({ target, to: floorOf(target) }))
        .filter(({ to }) => to !== floor && !(MAY_IMPORT[floor] ?? []).includes(to))
        .map(({ target }) => `${file} imports ${relative(SRC, target)}`);
    });
    expect(upward).toEqual([]);
  });

  it('has transports and the store blind to each other', () => {
    const crossing = files
      .filter((f) => f.startsWith('transport/'))
      .flatMap((file) => {
        const own = file.split('/')[1];
        return importsOf(file)
          .map((target) => relative(SRC, target))
          .filter(
            (target) =>
              target.startsWith('transport/') && target.split('/').length > 2 && target.split('/')[1] !== own,
          )
          .map((target) => `${file} imports ${target}`);
      });
    expect(crossing).toEqual([]);
  });
});
