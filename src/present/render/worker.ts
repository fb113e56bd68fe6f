/** The renderer's thread: one job at a time, answered by the bytes or by what went wrong. */
import { parentPort } from 'node:worker_threads';
import type { Job } from './job.ts';

export type Answer =
  | { readonly id: number; readonly bytes: Uint8Array }
  | { readonly id: number; readonly failed: string };

async function bytesOf(job: Job): Promise<Uint8Array> {
  switch (job.make) {
    case 'png': {
      const { pngOf } = await import('./png.ts');
      return pngOf(job.drawing, job.theme, job.scale);
    }
    case 'pdf': {
      const { pdfOf } = await import('./pdf.ts');
      return pdfOf(job.sheet);
    }
    case 'plan sheet': {
      const { pdfOf } = await import('./pdf.ts');
      const { planSheet } = await import('../sheets/plan-sheet.ts');
      return pdfOf(planSheet(job.plan, job.options));
    }
    default:
      return job satisfies never;
  }
}

const port = parentPort;
if (port === null) throw new Error('the renderer is started as a worker thread, by render()');

port.on('message', async ({ id, job }: { readonly id: number; readonly job: Job }) => {
  let answer: Answer;
  try {
    answer = { id, bytes: await bytesOf(job) };
  } catch (error) {
    answer = { id, failed: error instanceof Error ? (error.stack ?? error.message) : String(error) };
  }
  port.postMessage(answer);
});
