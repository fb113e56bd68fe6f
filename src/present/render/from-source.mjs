/** Begins the renderer's thread from its source, where no bundle was made: under the tests and the tools. */
import { register } from 'tsx/esm/api';

register();
await import('./worker.ts');
