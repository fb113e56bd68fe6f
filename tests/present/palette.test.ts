import { describe, expect, it } from 'vitest';
import {
  FILLS,
  type InkName,
  LINES,
  type LineName,
  PALETTES,
  type Palette,
  TEXT_INKS,
  THEMES,
} from '../../src/present/draw/palette.ts';

/** Relative luminance and contrast as Web Content Accessibility Guidelines 2.2 (W3C, 2023) define them. */
function luminance(colour: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((i) => {
    const c = Number.parseInt(colour.slice(i, i + 2), 16) / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(a: string, b: string): number {
  const [light, dark] = [Math.max(luminance(a), luminance(b)), Math.min(luminance(a), luminance(b))];
  return (light + 0.05) / (dark + 0.05);
}

/** Grounds on which texts and lines lie: the page, and every fill but the strong one, which has an ink of its own. */
function grounds({ ground, fills }: Palette): [string, string][] {
  return [
    ['ground', ground],
    ...FILLS.filter((f) => f !== 'strong').map((f): [string, string] => [f, fills[f]]),
  ];
}

const LINE_NAMES = Object.keys(LINES) as LineName[];

describe.each(THEMES)('on %s ground', (theme) => {
  const palette = PALETTES[theme];

  it('knows the extremes: black on white has 21 to 1', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 6);
    expect(contrast('#777777', '#ffffff')).toBeCloseTo(4.48, 2);
  });

  it('has every text at 4.5 to 1 or more on all that it may lie on (WCAG 2.2 AA, 1.4.3)', () => {
    const poor = TEXT_INKS.filter((ink) => ink !== 'on strong').flatMap((ink) =>
      grounds(palette)
        .filter(([, colour]) => contrast(palette.inks[ink], colour) < 4.5)
        .map(([name]) => `${ink} on ${name}`),
    );
    expect(poor).toEqual([]);
    expect(contrast(palette.inks['on strong'], palette.fills.strong)).toBeGreaterThanOrEqual(4.5);
  });

  it('has every line at 3 to 1 or more on all that it may lie on (WCAG 2.2 AA, 1.4.11)', () => {
    const poor = LINE_NAMES.filter((name) => name !== 'marks').flatMap((name) =>
      grounds(palette)
        .filter(([, colour]) => contrast(palette.inks[LINES[name].ink], colour) < 3)
        .map(([on]) => `${name} on ${on}`),
    );
    expect(poor).toEqual([]);
  });

  it('has the solid bar and the landmarks at 3 to 1 against what lies around them', () => {
    for (const [, colour] of grounds(palette))
      expect(contrast(palette.fills.strong, colour)).toBeGreaterThanOrEqual(3);
  });

  it('has the marks of the tape at 3 to 1 on the tape', () => {
    expect(contrast(palette.inks[LINES.marks.ink], palette.inks[LINES.tape.ink])).toBeGreaterThanOrEqual(3);
  });
});

describe('kinds of line that stand in one drawing', () => {
  const TOGETHER: readonly (readonly LineName[])[] = [
    ['yours', 'pattern', 'second', 'leader', 'dimension'],
    ['figure', 'tape', 'hidden', 'string', 'leader'],
  ];

  it.each(TOGETHER)(
    'differ in dash or width by half, so that no eye needs the colour: %s and others',
    (...names) => {
      const alike = names.flatMap((a, i) =>
        names.slice(i + 1).filter((b) => {
          const [one, other] = [LINES[a], LINES[b]];
          const widths = Math.max(one.width, other.width) / Math.min(one.width, other.width);
          return JSON.stringify(one.dash) === JSON.stringify(other.dash) && widths < 1.5;
        }),
      );
      expect(alike).toEqual([]);
    },
  );

  it('are drawn in inks that differ in greyscale from the ground by their luminance alone', () => {
    const inks: readonly InkName[] = ['yours', 'pattern', 'second', 'tape', 'figure'];
    for (const theme of THEMES)
      for (const ink of inks)
        expect(
          Math.abs(luminance(PALETTES[theme].inks[ink]) - luminance(PALETTES[theme].ground)),
        ).toBeGreaterThan(0.25);
  });
});
