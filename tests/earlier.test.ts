import { afterEach, describe, expect, it } from 'vitest';
import { openDesk } from '../src/desk.ts';
import type { Reply } from '../src/dialogue/message.ts';
import { loadFlows } from '../src/library.ts';
import { openStore } from '../src/store/sqlite.ts';
import type { Store } from '../src/store/store.ts';
import { databases } from './store/folder.ts';

const newFile = databases();
const flows = loadFlows();
const DAY_MS = 24 * 3600 * 1000;
const MAY_3 = Date.UTC(2026, 4, 3);

/** A knitter who comes again on another day. */
class Knitter {
  readonly store: Store = openStore(newFile(), 50);
  private now = MAY_3;
  private made = 0;
  private readonly desk = openDesk({
    flows,
    store: this.store,
    clock: () => this.now,
    newId: () => `${++this.made}`,
    unit: 'cm',
    terms: 'us',
  });
  private session = '';
  private replies: readonly Reply[] = [];

  begin(flow: string): this {
    ({ session: this.session, replies: this.replies } = this.desk.begin('ada', flow));
    return this;
  }

  /** Answers what is asked, each question by its name, and comes to the plan. */
  answer(typed: Readonly<Record<string, string>>): this {
    for (const [question, text] of Object.entries(typed)) {
      expect(this.asked).toBe(question);
      this.say(text);
    }
    return this;
  }

  say(text: string): this {
    this.replies = this.desk.say('ada', this.session, { text });
    return this;
  }

  later(): this {
    this.now += 10 * DAY_MS;
    return this;
  }

  get asked(): string {
    const last = this.replies.at(-1);
    return last?.reply === 'ask' ? last.question : (last?.reply ?? 'nothing');
  }

  get offered(): string[] {
    const last = this.replies.at(-1);
    return last?.reply === 'ask' ? last.buttons.map(({ label, note }) => `${label} (${note ?? ''})`) : [];
  }

  get told(): string {
    return this.replies.flatMap((r) => (r.reply === 'say' ? [r.text] : [])).join('\n');
  }

  get outcome() {
    const last = this.replies.at(-1);
    if (last?.reply !== 'outcome' || last.outcome.kind !== 'plan') throw new Error(`no plan: ${this.asked}`);
    return last.outcome.plan;
  }

  get log() {
    return this.store.load(this.session)?.log ?? [];
  }
}

const SLEEVE = {
  sleeve_made: 'from the cuff, flat',
  gauge: '22 sts and 30 rows to 10 cm',
  table: 'women',
  upper_arm: '31 cm',
  wrist: '16 cm',
  fit: 'classic',
  sleeve_length: '45 cm',
  p_wrist: '48',
  p_upper_arm: '78',
  p_cuff: '6 cm',
};

const knitters: Knitter[] = [];
const knitter = () => {
  const one = new Knitter();
  knitters.push(one);
  return one;
};
afterEach(() => {
  for (const one of knitters.splice(0)) one.store.close();
});

describe('a knitter who comes back', () => {
  it('takes her measurements along with one press, and is asked for none of them', () => {
    const ada = knitter().begin('sleeve').answer(SLEEVE).later().begin('size').answer({
      pattern: 'sample',
      gauge: '22 sts and 30 rows to 10 cm',
      table: 'women',
      bust: '96.5 cm',
      upper_bust: '91 cm',
      fit: 'classic',
    });
    ada
      .later()
      .begin('bust')
      .answer({ body_made: 'hem round', gauge: '22 sts and 30 rows to 10 cm', p_bust: '220' });
    expect(ada.asked).toBe('bust');
    expect(ada.offered).toContain('Same wearer as on 13 May 2026 (bust or chest 96.5 cm, upper bust 91 cm)');
    ada.say('Same wearer as on 13 May 2026');
    expect(ada.told).toContain('bust or chest 96.5 cm, upper bust 91 cm');
    expect(ada.asked).toBe('front_length');
  });

  it('is told the day of each measurement, not the day on which it was taken along', () => {
    const ada = knitter().begin('sleeve').answer(SLEEVE).later().begin('sleeve');
    ada.answer({
      sleeve_made: 'flat',
      gauge: '20 sts and 28 rows to 10 cm',
      table: 'Same wearer as on 3 May 2026',
    });
    expect(ada.asked).toBe('fit');
    expect(ada.log.find((l) => l.line === 'answer' && l.question === 'wrist')).toMatchObject({ at: MAY_3 });
    ada.later().begin('sleeve').answer({ sleeve_made: 'flat', gauge: '20 sts and 28 rows to 10 cm' });
    expect(ada.offered.filter((label) => label.startsWith('Same wearer'))).toEqual([
      'Same wearer as on 3 May 2026 (upper arm 31 cm, wrist 16 cm, and 1 more)',
    ]);
  });

  it('who knits for two never has the figures of both in one', () => {
    const ada = knitter().begin('sleeve').answer(SLEEVE).later().begin('sleeve');
    ada.answer({ ...SLEEVE, table: 'children', upper_arm: '20 cm', wrist: '13 cm' });
    ada.later().begin('sleeve').answer({ sleeve_made: 'flat', gauge: '20 sts and 28 rows to 10 cm' });
    expect(ada.offered.filter((label) => label.startsWith('Same'))).toEqual([
      'Same wearer as on 13 May 2026 (upper arm 20 cm, wrist 13 cm, and 1 more)',
      'Same wearer as on 3 May 2026 (upper arm 31 cm, wrist 16 cm, and 1 more)',
    ]);
  });

  it('can change one of them, and types the others no more', () => {
    const ada = knitter().begin('sleeve').answer(SLEEVE).later().begin('sleeve');
    ada.answer({
      sleeve_made: 'flat',
      gauge: '20 sts and 28 rows to 10 cm',
      table: 'Same wearer as on 3 May 2026',
    });
    ada.say('change upper arm').say('33 cm');
    expect(ada.asked).toBe('fit');
    expect(ada.log.findLast((l) => l.line === 'answer')).toMatchObject({
      question: 'upper_arm',
      typed: '33 cm',
    });
  });

  it('is not offered what she came to measure again', () => {
    const ada = knitter().begin('sleeve').answer(SLEEVE).later().begin('measure');
    expect(ada.asked).toBe('table');
    expect(ada.offered.filter((label) => label.startsWith('Same'))).toEqual([]);
  });

  it('types the figures of her pattern once, and others than those of its size are never offered', () => {
    const ada = knitter().begin('sleeve').answer(SLEEVE).later().begin('sleeve');
    expect(ada.offered).toContain(
      'Same pattern as on 3 May 2026 (pattern, cuff stitches 48 stitches, pattern, upper arm stitches 78 stitches, and 2 more)',
    );
    ada.answer({
      sleeve_made: 'Same pattern as on 3 May 2026',
      gauge: '20 sts and 28 rows to 10 cm',
      table: 'skip',
    });
    ada.answer({ upper_arm: '31 cm', wrist: '16 cm', fit: 'loose', sleeve_length: '45 cm' });
    expect(ada.asked).toBe('review');
    ada.begin('regauge').answer({ pattern: 'my own' });
    expect(ada.offered.filter((label) => label.startsWith('Same pattern'))).toEqual([]);
  });

  it('checks in mid-project what her plan says, in five questions', () => {
    const ada = knitter().begin('sleeve').answer(SLEEVE).say('yes');
    const sleeve = ada.outcome.pieces[0]?.after;
    ada.later().begin('recheck');
    expect(ada.offered[8]).toMatch(/^Planned on 3 May 2026: sleeve, cuff to upper arm/);
    ada.say('Planned on 3 May 2026: sleeve, cuff to upper arm');
    const [cuff, arm] = [sleeve?.levels[1], sleeve?.levels[2]];
    expect(ada.told).toContain(
      `stitches at the beginning ${cuff?.stitches} stitches, stitches at the end ${arm?.stitches} stitches`,
    );
    ada.answer({
      recheck_rows: '40',
      recheck_stitches: `${(cuff?.stitches ?? 0) + 10}`,
      recheck_counted: '44 sts over 20 cm',
      recheck_counted_rows: '60 rows over 20 cm',
      review: 'yes',
    });
    const planned = ada.outcome.steps[0]?.workings.find(
      ({ label }) => label === 'length to the end, planned',
    );
    // 30 rows to 10 cm.
    expect(planned?.result.value).toBeCloseTo(((arm?.row ?? 0) - (cuff?.row ?? 0)) / 3, 9);
  });
});
