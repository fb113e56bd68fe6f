/** What the app asks about itself, and the commands it registers. */
import type { Call, Reply, Route } from '../call.ts';
import { type JsonObject, objects } from '../json.ts';
import type { Platform } from '../platform.ts';
import { missingAccess, unknownApplication, unknownGuild } from '../refusal.ts';
import type { RegisteredCommand } from '../registry.ts';
import { commandList } from '../rules/commands.ts';
import { userOnWire } from '../wire.ts';

const DAY_MS = 24 * 60 * 60_000;

export function applicationRoutes(platform: Platform): readonly Route[] {
  const bot = userOnWire(platform.world.bot);
  const route = (pattern: string, handler: (call: Call) => Reply): Route => ({
    pattern,
    needsToken: true,
    handler,
  });
  const commands = '/applications/:app/commands';
  const guildCommands = '/applications/:app/guilds/:guild/commands';
  return [
    route('GET /gateway/bot', () => ({ status: 200, body: gatewayInformation(platform) })),
    route('GET /users/@me', () => ({ status: 200, body: bot })),
    route('GET /applications/@me', () => ({ status: 200, body: application(platform, bot) })),
    route(`GET ${commands}`, (call) => list(platform, call)),
    route(`PUT ${commands}`, (call) => replace(platform, call)),
    route(`GET ${guildCommands}`, (call) => list(platform, call)),
    route(`PUT ${guildCommands}`, (call) => replace(platform, call)),
  ];
}

function gatewayInformation(platform: Platform): JsonObject {
  const { allowance, remaining } = platform.gateway.identifyLimit;
  return {
    url: platform.address.gateway,
    shards: platform.settings.shards,
    session_start_limit: {
      total: allowance.perDay,
      remaining,
      reset_after: DAY_MS,
      max_concurrency: allowance.maxConcurrency,
    },
  };
}

function application(platform: Platform, bot: JsonObject): JsonObject {
  return {
    id: platform.world.appId,
    name: platform.world.bot.name,
    icon: null,
    description: '',
    bot_public: true,
    bot_require_code_grant: false,
    verify_key: '0'.repeat(64),
    flags: 0,
    bot,
    owner: bot,
    integration_types_config: { '0': {}, '1': {} },
  };
}

function list(platform: Platform, call: Call): Reply {
  const registered = platform.registry.list(scope(platform, call));
  return { status: 200, body: registered.map((command) => onWire(platform, command)) };
}

function replace(platform: Platform, call: Call): Reply {
  const guildId = scope(platform, call);
  call.check(commandList(guildId === undefined ? 'global' : 'guild'));
  call.refuseIfWrong();
  const registered = platform.registry.replace(guildId, objects(call.body));
  return { status: 200, body: registered.map((command) => onWire(platform, command)) };
}

/** The server a command list belongs to, undefined for the global one. */
function scope(platform: Platform, call: Call): string | undefined {
  if (call.param('app') !== platform.world.appId) throw unknownApplication();
  const guildId = call.params.guild;
  if (guildId === undefined) return undefined;
  const guild = platform.world.guilds.get(guildId);
  if (!guild) throw unknownGuild();
  if (!guild.hasApp) throw missingAccess();
  return guildId;
}

function onWire(platform: Platform, command: RegisteredCommand): JsonObject {
  return {
    default_member_permissions: null,
    nsfw: false,
    description: '',
    ...(command.guildId === undefined && { contexts: [0, 1, 2], integration_types: [0] }),
    ...command.definition,
    id: command.id,
    type: command.type,
    application_id: platform.world.appId,
    ...(command.guildId !== undefined && { guild_id: command.guildId }),
    version: command.id,
  };
}
