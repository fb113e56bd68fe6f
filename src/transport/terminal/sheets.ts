/** Where sheets that are filled in by hand are picked, and kept as files. */
import type { Button } from '../../dialogue/message.ts';
import type { Drawings } from '../contract.ts';
import type { Person } from './conversation.ts';
import { ofBlank } from './keeping.ts';
import { paragraph } from './render.ts';
import { LEAVE, meant, NOTHING, type Screen } from './screen.ts';

export const SHEETS = 'Sheets to print and fill in by hand: measurements, and the sums';
const BACK: Button = { label: 'Back to the beginning', send: 'back' };

export async function pickSheets(drawings: Drawings, person: Person): Promise<'leave' | 'another'> {
  const blanks = await drawings.blanks();
  const screen: Screen = {
    ...NOTHING,
    buttons: [...blanks.map(({ id, title }) => ({ label: title, send: id })), BACK, LEAVE],
    example: 'waist large A4 to waist.pdf',
  };
  person.tell([
    paragraph('Sheets to print', 'title'),
    paragraph('Each is kept as a PDF file in the folder you are in.'),
  ]);
  for (;;) {
    const typed = await person.answer(screen);
    const text = typed === undefined ? LEAVE.send : meant(screen, typed);
    if (text === LEAVE.send) return 'leave';
    if (text === BACK.send) return 'another';
    const [, first = '', rest = ''] = /^(\S*)(.*)$/s.exec(text.trim()) ?? [];
    const blank = blanks.find(({ id }) => id === first.toLowerCase());
    if (blank !== undefined) person.tell(await ofBlank(drawings, blank.id, rest));
    else person.tell([paragraph(`There is no sheet '${first}'.`, 'refused')]);
  }
}
