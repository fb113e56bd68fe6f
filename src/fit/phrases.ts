/** Names of the sentences that a plan is made of. `present` holds the wording of each; the gaps are named in braces there. */
export const PHRASES = ['where: whole piece'] as const;
export type PhraseName = (typeof PHRASES)[number];
