import { walkChapters } from './walk-chapters.ts';

walkChapters(2);
