import { describe, expect, it } from 'vitest';
import { type PlainCommand, readCommand } from '../../../src/dialogue/read/command.ts';
import type { LengthUnit } from '../../../src/fit/units.ts';

describe('A command', () => {
  it.each<[string, PlainCommand]>([
    ['back', 'back'],
    ['Go back!', 'back'],
    ['/back', 'back'],
    ['zurück', 'back'],
    ['why?', 'why'],
    ['Why do you ask?', 'why'],
    ['how', 'how'],
    ['how do I measure this?', 'how'],
    ['I don’t know', 'do not know'],
    ["don't know", 'do not know'],
    ['dunno', 'do not know'],
    ['not sure', 'do not know'],
    ['?', 'do not know'],
    ['??', 'do not know'],
    ['idk', 'do not know'],
    ['no idea', 'do not know'],
    ['unknown', 'do not know'],
    ['weiß nicht', 'do not know'],
    ['skip', 'skip'],
    ['later', 'later'],
    ['pause', 'pause'],
    ['stop', 'pause'],
    ['start over', 'start over'],
    ['start from the beginning', 'start over'],
    ['cancel', 'cancel'],
    ['help', 'help'],
    ['review', 'review'],
    ['yes', 'yes'],
    ['no', 'no'],
  ])('“%s” is ‘%s’', (text, command) => {
    expect(readCommand(text)).toEqual({ command });
  });

  it.each<[string, LengthUnit | undefined]>([
    ['inches', 'in'],
    ['in', 'in'],
    ['Centimetres.', 'cm'],
    ['cm', 'cm'],
    ['use cm', 'cm'],
    ['change to inches', 'in'],
    ['switch to inches please', 'in'],
    ['metric', 'cm'],
    ['units', undefined],
  ])('“%s” chooses the unit %s', (text, unit) => {
    expect(readCommand(text)).toEqual({ command: 'units', unit });
  });

  it.each([
    ['change bust', 'bust'],
    ['change my bust', 'bust'],
    ['Edit the answer to wrist', 'wrist'],
    ['change', ''],
  ])('“%s” asks to change ‘%s’', (text, what) => {
    expect(readCommand(text)).toEqual({ command: 'change', what });
  });

  it.each(['38', '38 in', '5', '22 sts', 'no 5', 'yes 38', 'back length', 'raglan', '', ' ', 'how long'])(
    '“%s” is none',
    (text) => {
      expect(readCommand(text)).toBeUndefined();
    },
  );
});
