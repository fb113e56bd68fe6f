/** What the terminal can draw and keep. Pictures are loaded when the first one is wanted, so that the program starts at once. */
import type { Flows } from './flow/compile.ts';
import type { Printing } from './keep.ts';
import type { Drawings } from './transport/contract.ts';

/** Files go into the folder; `printing` is asked at each file, as the day may have changed. */
export function drawingsFor(flows: Flows, folder: string, printing: () => Printing): Drawings {
  const present = () => import('./present/pictures.ts');
  const asked = (id: string) =>
    [...flows.values()].map(({ questions }) => questions.get(id)).find((question) => question !== undefined);
  return {
    plan: async (plan, columns) => (await present()).planInCharacters(plan, printing().dialect, columns),
    pictured: (id) => asked(id)?.picture !== undefined,
    question: async (id, columns) => {
      const { measuredBy, measuringPicture } = await present();
      const measured = measuredBy({ id, measurement: asked(id)?.measurement });
      if (measured === undefined) throw new RangeError(`the question '${id}' has no picture`);
      return measuringPicture(measured).characters(columns);
    },
    blanks: async () => {
      const { BLANKS, blankTitle } = await present();
      return BLANKS.map((id) => ({ id, title: blankTitle(id) }));
    },
    keep: async (wish) => (await import('./keep.ts')).keepNew(wish, folder, printing()),
  };
}
