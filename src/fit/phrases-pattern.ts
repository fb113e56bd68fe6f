/** Names of the sentences about a pattern's own figures: its shaping lines, its contradictions, its gauge and sizes. */
export const PATTERN_PHRASES = [
  // A shaping line
  'summary: line read',
  'summary: line read in several ways',
  'where: the line, row by row',
  'where: first row ends the interval',
  'where: first row is the next',
  'do: the line in numbers',
  'note: times after the first row',
  'note: times with the first row',
  'note: the line adds up',
  'note: the line does not add up',
  'note: the line would add up from',
  'note: only this reading adds up',
  'note: plain rows after the line',
  'cannot: line cannot be read',
  'cannot: line needs the count before',
  'cannot: line needs the stitches a row',
  'cannot: line never reaches its count',
  'instead: give the counts of the line',
  'instead: read the line once more',
] as const;
