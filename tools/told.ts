/** Writes the facts of the plans in `tests/chapters/told/` anew: `node --import tsx tools/told.ts`. */
import { writeFileSync } from 'node:fs';
import { outcomeTold } from '../tests/chapters/told.ts';
import { CASES, DASHES, FOLDER, outcomeOfCase } from '../tests/chapters/told-cases.ts';

for (const one of CASES)
  writeFileSync(
    new URL(one.name, FOLDER),
    `${[...one.answers, DASHES, ...outcomeTold(outcomeOfCase(one))].join('\n')}\n`,
  );
