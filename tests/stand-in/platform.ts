/** The parts that requests and people act upon. */
import type { Gateway } from './gateway.ts';
import type { Interactions } from './interactions.ts';
import type { Messages } from './messages.ts';
import type { Patience } from './patience.ts';
import type { Registry } from './registry.ts';
import type { Settings } from './settings.ts';
import type { World } from './world.ts';

export interface Platform {
  readonly settings: Settings;
  readonly world: World;
  readonly messages: Messages;
  readonly interactions: Interactions;
  readonly patience: Patience;
  readonly registry: Registry;
  readonly gateway: Gateway;
  /** Base addresses, known once the server listens. */
  readonly address: { http: string; gateway: string };
}
