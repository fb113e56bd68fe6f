/** How far two words are apart, for recognising a typing slip. */

/** Letters to add, drop or exchange to make one word of the other. */
export function editDistance(a: string, b: string): number {
  let above = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (const [i, letter] of [...a].entries()) {
    const row = [i + 1];
    for (let j = 1; j <= b.length; j++) {
      const exchange = (above[j - 1] ?? 0) + (letter === b[j - 1] ? 0 : 1);
      row.push(Math.min(exchange, (above[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1));
    }
    above = row;
  }
  return above[b.length] ?? 0;
}
