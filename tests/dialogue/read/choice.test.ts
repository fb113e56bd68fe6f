import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Choice, readChoice, readChoices } from '../../../src/dialogue/read/choice.ts';

const SLEEVES: readonly Choice[] = [
  { id: 'raglan', label: 'Raglan', hear: [] },
  { id: 'set-in', label: 'Set-in sleeve', hear: ['set in', 'eingesetzter Ärmel'] },
  { id: 'drop', label: 'Drop shoulder', hear: ['dropped shoulder'] },
  { id: 'yoke', label: 'Round yoke', hear: ['circular yoke'] },
];
const SIZES: readonly Choice[] = ['34', '36', '136'].map((id) => ({ id, label: `${id} in`, hear: [] }));

describe('A choice', () => {
  it.each([
    ['Raglan', 'raglan'],
    ['  RAGLÀN! ', 'raglan'],
    ['rag', 'raglan'],
    ['yoke', 'yoke'],
    ['set–in', 'set-in'],
    ['Set in sleeve, please', 'set-in'],
    ['eingesetzter armel', 'set-in'],
    ['2', 'set-in'],
    ['#3', 'drop'],
    ['4.', 'yoke'],
    ['option two', 'set-in'],
  ])('“%s” is heard as %s', (text, id) => {
    expect(readChoice(text, SLEEVES)).toMatchObject({ kind: 'heard', value: id });
  });

  it('that several begin alike is offered', () => {
    expect(readChoice('r', SLEEVES)).toMatchObject({
      kind: 'which',
      options: [{ value: 'raglan' }, { value: 'yoke' }],
    });
  });

  it.each([
    ['raglann', 'spelling'],
    ['a raglan I guess', 'extra words'],
  ])('“%s” is put back: %s', (text, why) => {
    expect(readChoice(text, SLEEVES)).toMatchObject({ kind: 'ask back', why, value: 'raglan' });
  });

  it.each(['5', '0', '1.5', 'banana', 'not raglan'])('“%s” is refused, and the choices are named', (text) => {
    expect(readChoice(text, SLEEVES)).toMatchObject({
      kind: 'refused',
      reason: 'no such choice',
      message: expect.stringContaining('‘Raglan’, ‘Set-in sleeve’, ‘Drop shoulder’ or ‘Round yoke’'),
    });
  });

  it('among sizes goes by the size, not by the place in the list', () => {
    expect(readChoice('34', SIZES)).toMatchObject({ kind: 'heard', value: '34' });
    expect(readChoice('36"', SIZES)).toMatchObject({ kind: 'heard', value: '36' });
    expect(readChoice('2', SIZES)).toMatchObject({ kind: 'refused' });
    expect(readChoice('3', SIZES)).toMatchObject({ kind: 'refused' });
  });

  it('is heard by its own label and by its number, whatever the labels', () => {
    const labels = fc.uniqueArray(fc.stringMatching(/^[a-z]{1,8}$/), { minLength: 1, maxLength: 25 });
    fc.assert(
      fc.property(labels, (words) => {
        const choices = words.map((label) => ({ id: `id ${label}`, label, hear: [] }));
        choices.forEach((choice, i) => {
          expect(readChoice(choice.label, choices)).toMatchObject({ kind: 'heard', value: choice.id });
          expect(readChoice(`${i + 1}`, choices)).toMatchObject({ kind: 'heard', value: choice.id });
        });
      }),
    );
  });
});

describe('Several choices', () => {
  it.each<[string, readonly string[]]>([
    ['raglan, yoke', ['raglan', 'yoke']],
    ['yoke and raglan', ['raglan', 'yoke']],
    ['raglan & drop', ['raglan', 'drop']],
    ['1 3', ['raglan', 'drop']],
    ['1,3', ['raglan', 'drop']],
    ['raglan, raglan', ['raglan']],
    ['all', ['raglan', 'set-in', 'drop', 'yoke']],
    ['none', []],
  ])('“%s” are heard', (text, ids) => {
    expect(readChoices(text, SLEEVES)).toMatchObject({ kind: 'heard', value: ids });
  });

  it('with one that is doubtful are offered or put back as a whole', () => {
    expect(readChoices('drop, r', SLEEVES)).toMatchObject({
      kind: 'which',
      options: [{ value: ['raglan', 'drop'] }, { value: ['drop', 'yoke'] }],
    });
    expect(readChoices('raglann, yoke', SLEEVES)).toMatchObject({
      kind: 'ask back',
      value: ['raglan', 'yoke'],
    });
  });

  it('with one that is unknown are refused', () => {
    expect(readChoices('raglan and banana', SLEEVES)).toMatchObject({
      kind: 'refused',
      reason: 'no such choice',
    });
  });
});
