/** Labels along a line: each as near to its own place as may be, in order, none upon another. */

export interface Wanted {
  /** Where the middle would best lie. */
  readonly middle: number;
  readonly length: number;
}

/**
 * The middles of the labels, at least `gap` apart, moved as little as possible in the sense of least squares: labels
 * that press on one another form a block, and each block lies at the mean of what its labels want.
 */
export function settle(labels: readonly Wanted[], gap: number): number[] {
  const offsets: number[] = [];
  labels.forEach((label, i) => {
    const before = labels[i - 1];
    const step = before === undefined ? 0 : (before.length + label.length) / 2 + gap;
    offsets.push((offsets[i - 1] ?? 0) + step);
  });
  const blocks: { sum: number; count: number }[] = [];
  labels.forEach((label, i) => {
    let block = { sum: label.middle - (offsets[i] ?? 0), count: 1 };
    for (let last = blocks.at(-1); last !== undefined && mean(last) > mean(block); last = blocks.at(-1)) {
      block = { sum: last.sum + block.sum, count: last.count + block.count };
      blocks.pop();
    }
    blocks.push(block);
  });
  return blocks.flatMap((b) => Array<number>(b.count).fill(mean(b))).map((at, i) => at + (offsets[i] ?? 0));
}

function mean(block: { readonly sum: number; readonly count: number }): number {
  return block.sum / block.count;
}
