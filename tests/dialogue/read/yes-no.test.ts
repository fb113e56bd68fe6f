import { describe, expect, it } from 'vitest';
import { readYesNo } from '../../../src/dialogue/read/yes-no.ts';

describe('Yes or no', () => {
  it.each(['yes', 'Yes!', 'y', 'yep', 'ok', 'yes please', 'yes, that’s right', 'of course', 'ja', 'oui'])(
    '“%s” is yes',
    (text) => {
      expect(readYesNo(text)).toMatchObject({ kind: 'heard', value: true });
    },
  );

  it.each(['no', 'N', 'nope', 'no thanks', 'not right', 'no, not really', 'nein', 'non'])(
    '“%s” is no',
    (text) => {
      expect(readYesNo(text)).toMatchObject({ kind: 'heard', value: false });
    },
  );

  it.each(['yes no', 'no, 38', 'yes 38', 'perhaps', '38', '?'])('“%s” is neither', (text) => {
    expect(readYesNo(text)).toMatchObject({ kind: 'refused', example: 'yes' });
  });
});
