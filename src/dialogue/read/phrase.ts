/** A typed phrase for comparing with listed ones: words alone, without case, accents, punctuation or politeness. */
import { plain } from './plain.ts';

const POLITE = new Set(
  "please thanks thank you pls bitte danke merci hi hello hey um well so i'd id like i'll take the a an".split(
    ' ',
  ),
);

/** Letters and digits in plain spelling, one space between words; empty for punctuation alone. */
export function phraseOf(text: string): string {
  return plain(text)
    .replace(/[^\p{L}\p{N}'\u2044]+/gu, ' ')
    .trim();
}

/** The phrase without the words that only make it kind. */
export function bare(phrase: string): string {
  return phrase
    .split(' ')
    .filter((word) => !POLITE.has(word))
    .join(' ');
}
