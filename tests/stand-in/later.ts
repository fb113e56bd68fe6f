/** A promise that is settled from outside; settling it again does nothing, and nobody needs to wait for it. */
export interface Later<T> {
  readonly promise: Promise<T>;
  readonly resolve: (value: T) => void;
  readonly reject: (reason: Error) => void;
}

export function later<T>(): Later<T> {
  let resolve: (value: T) => void = () => {};
  let reject: (reason: Error) => void = () => {};
  const promise = new Promise<T>((whenDone, whenFailed) => {
    resolve = whenDone;
    reject = whenFailed;
  });
  promise.catch(() => {});
  return { promise, resolve, reject };
}

/** The promise's value, or the error if `ms` pass first. */
export async function within<T>(promise: Promise<T>, ms: number, error: () => Error): Promise<T> {
  let timer: NodeJS.Timeout | undefined;
  const tooLate = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(error()), ms);
  });
  try {
    return await Promise.race([promise, tooLate]);
  } finally {
    clearTimeout(timer);
  }
}
