/** Threads and the channels in which they hang, as the platform tells with each deed: a host picks channels, not threads. */
import { GatewayDispatchEvents, type GatewayDispatchPayload } from 'discord.js';

/** Threads that are remembered; one that is forgotten is told again with the next deed. */
const MOST = 10_000;

export class Threads {
  private readonly homes = new Map<string, string>();

  /** Hears what comes over the gateway before the library makes it into objects that know no parents. */
  readonly hear = (packet: GatewayDispatchPayload): void => {
    if (packet.t !== GatewayDispatchEvents.InteractionCreate) return;
    const { channel } = packet.d;
    if (channel === undefined || !('thread_metadata' in channel) || typeof channel.parent_id !== 'string')
      return;
    this.homes.set(channel.id, channel.parent_id);
    const [oldest] = this.homes.keys();
    if (this.homes.size > MOST && oldest !== undefined) this.homes.delete(oldest);
  };

  /** The channel itself, or the one in which the thread hangs. */
  homeOf(channel: string): string {
    return this.homes.get(channel) ?? channel;
  }
}
