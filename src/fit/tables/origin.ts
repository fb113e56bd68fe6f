/** Where figures come from, so that a plan can name the source beside the figure. */

export interface Origin {
  readonly title: string;
  readonly publisher: string;
  readonly year: string;
  /** `computed`: worked out by us from the public data files. `from memory`: not checked against the page. */
  readonly how: 'read' | 'computed' | 'from memory';
  /** Line that the publisher asks for where its figures are used. */
  readonly credit?: string;
}

export const ORIGINS = {
  council: {
    title: 'Standards & Guidelines for Crochet and Knitting',
    publisher: 'Craft Yarn Council',
    year: '2015 and 2018',
    how: 'from memory',
    credit: "Source: Craft Yarn Council's www.YarnStandards.com",
  },
  soldiers: {
    title: '2012 Anthropometric Survey of U.S. Army Personnel (NATICK/TR-15/007), public data files',
    publisher: 'U.S. Army Natick Soldier Research, Development and Engineering Center',
    year: '2014',
    how: 'computed',
  },
  civilians: {
    title: 'National Health and Nutrition Examination Survey, Body Measures',
    publisher: 'US Centers for Disease Control and Prevention, National Center for Health Statistics',
    year: '2015-2018',
    how: 'computed',
  },
  growth: {
    title: 'CDC Growth Charts: United States',
    publisher: 'US Centers for Disease Control and Prevention, National Center for Health Statistics',
    year: '2000',
    how: 'read',
  },
  'upper torso': {
    title: 'Demystifying Ease in Garment Patterns, part 2',
    publisher: 'digitsandthreads.ca',
    year: 'undated',
    how: 'read',
  },
  trade: {
    title: 'Common practice of the trade',
    publisher: 'none',
    year: 'undated',
    how: 'from memory',
  },
} as const satisfies Record<string, Origin>;

export type OriginName = keyof typeof ORIGINS;
