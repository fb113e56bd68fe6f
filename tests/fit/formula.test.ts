import { describe, expect, it } from 'vitest';
import { evaluate, readFormula } from '../../src/fit/formula.ts';

const given = {
  a: { value: 12 },
  b: { value: 5 },
  c: { value: 2 },
  a1: { value: 10 },
  b2: { value: 7 },
  a10: { value: 100 },
  half: { value: 0.5 },
};

describe('a formula', () => {
  it.each([
    ['a + b * c', 22],
    ['(a + b) * c', 34],
    ['a - b - c', 5],
    ['a - (b - c)', 9],
    ['a * b * c', 120],
    ['a / c / c', 3],
    ['a / c * b', 30],
    ['a / (b - c)', 4],
    ['2.5 * b', 12.5],
    ['a', 12],
    ['30', 30],
    ['a1 + b2', 17],
    ['a10 - b', 95],
    ['half * a', 6],
    ['12.25 * b + 100', 161.25],
    ['((a))', 12],
    ['√(a * a + b * b)', 13],
    ['√√(a + 4)', 2],
    ['a - √(b + 4) * c', 6],
  ])('%s is worked in the order of school arithmetic', (formula, value) => {
    expect(readFormula(formula)(given)).toBe(value);
    expect(evaluate(formula, given)).toBe(value);
  });

  it.each([
    ['a +', /'a \+' ends too early/],
    ['(a + b', /closing bracket/],
    ['a b', /cannot be read from 'b' on/],
    ['a * b)', /cannot be read from '\)' on/],
    ['', /ends too early/],
    ['a²', /cannot be read/],
    ['a ^ b', /cannot be read/],
    ['a × b', /cannot be read/],
  ])('%s is refused, not read in part', (formula, fault) => {
    expect(() => readFormula(formula)).toThrow(fault);
  });

  it.each([
    ['.5 * a', /cannot be read/],
    ['2. * a', /cannot be read/],
  ])('%s is refused: a decimal has figures on both sides of its point', (formula, fault) => {
    expect(() => readFormula(formula)).toThrow(fault);
  });

  it('names the letter that is not given', () => {
    expect(() => evaluate('a + x', given)).toThrow(/'a \+ x' needs 'x'/);
  });
});
