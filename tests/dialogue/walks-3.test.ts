import { expect, it } from 'vitest';
import { chaptersOf, lackingIn, PATIENCE } from './walk-chapters.ts';

it.each(chaptersOf(2))(
  '%s goes on whatever is typed, loses nothing and comes to an end',
  (_, flow) => {
    expect(lackingIn(flow)).toEqual({ neverMet: [], unended: 0 });
  },
  PATIENCE,
);
