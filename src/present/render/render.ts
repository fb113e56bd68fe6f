/**
 * Renders drawings and sheets in a thread of its own, so that no turn waits for a picture. The thread is begun with the
 * first job, does one after another, and keeps no program alive that has nothing else to do.
 */
import { Worker } from 'node:worker_threads';
import type { Job } from './job.ts';
import type { Answer } from './worker.ts';

/** The thread could not render a job, or died of it; the message says which. */
export class RenderFailed extends Error {
  override readonly name = 'RenderFailed';
}

interface Waiting {
  readonly resolve: (bytes: Uint8Array) => void;
  readonly reject: (error: Error) => void;
}

let worker: Worker | undefined;
let lastId = 0;
const waiting = new Map<number, Waiting>();

/** The bytes of the file. Rejects with RenderFailed. */
export function render(job: Job): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    worker ??= begin();
    lastId += 1;
    waiting.set(lastId, { resolve, reject });
    worker.ref();
    worker.postMessage({ id: lastId, job });
  });
}

function begin(): Worker {
  const fromSource = import.meta.url.endsWith('.ts');
  const file = fromSource ? './from-source.mjs' : './render-worker.js';
  const begun = new Worker(new URL(file, import.meta.url));
  begun.on('message', (answer: Answer) => {
    const job = waiting.get(answer.id);
    waiting.delete(answer.id);
    if (waiting.size === 0) begun.unref();
    if ('bytes' in answer) job?.resolve(answer.bytes);
    else job?.reject(new RenderFailed(answer.failed));
  });
  begun.on('error', (error) => died(begun, error.message));
  begun.on('exit', (code) => died(begun, `it ended with code ${code}`));
  return begun;
}

/** All that waited for this thread fails; the next job begins another. */
function died(dead: Worker, why: string): void {
  if (worker !== dead) return;
  worker = undefined;
  const failed = [...waiting.values()];
  waiting.clear();
  for (const job of failed) job.reject(new RenderFailed(`the renderer stopped: ${why}`));
}
