import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { parse } from 'dotenv';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { ConfigFaults, configFrom, discordConfigFrom } from '../src/config.ts';

const DEFAULTS = { data: resolve('data'), unit: null, terms: 'us', paper: null, type: 'normal' };

describe('the settings', () => {
  it('have defaults, for what is not set and for what is set to nothing', () => {
    expect(configFrom({})).toEqual(DEFAULTS);
    expect(configFrom({ EASEWRIGHT_DATA: '', EASEWRIGHT_UNIT: ' ', EASEWRIGHT_TERMS: '' })).toEqual(DEFAULTS);
  });

  it('are taken from the environment', () => {
    const set = { EASEWRIGHT_DATA: '/srv/knit', EASEWRIGHT_UNIT: 'in', EASEWRIGHT_TERMS: 'uk', PATH: '/bin' };
    const print = { EASEWRIGHT_PAPER: 'Letter', EASEWRIGHT_TYPE: 'large' };
    expect(configFrom({ ...set, ...print })).toEqual({
      data: '/srv/knit',
      unit: 'in',
      terms: 'uk',
      paper: 'Letter',
      type: 'large',
    });
  });

  it('name every fault at once, in plain words', () => {
    const read = () => configFrom({ EASEWRIGHT_UNIT: 'feet', EASEWRIGHT_TERMS: 'au' });
    expect(read).toThrow(ConfigFaults);
    expect(read).toThrow(
      expect.objectContaining({
        faults: [
          "EASEWRIGHT_UNIT is 'feet', but it can only be cm or in.",
          "EASEWRIGHT_TERMS is 'au', but it can only be us or uk.",
        ],
      }),
    );
  });

  it('stand in the example file with their defaults', () => {
    expect(configFrom(parse(readFileSync('.env.example')))).toEqual(DEFAULTS);
  });
});

describe('the settings of the bot', () => {
  const TOKEN = 'MTIzNDU2.Nzg5MDEy.c2VjcmV0LXRva2Vu';
  const SET = {
    EASEWRIGHT_DISCORD_TOKEN: ` ${TOKEN} `,
    EASEWRIGHT_DISCORD_APPLICATION: '123456789012345678',
  };

  it('are taken beside the others, with what is usual where they are not set', () => {
    expect(discordConfigFrom({ ...SET, EASEWRIGHT_UNIT: 'in' })).toEqual({
      ...DEFAULTS,
      unit: 'in',
      token: TOKEN,
      application: '123456789012345678',
      shards: 1,
      api: 'https://discord.com/api',
    });
    expect(discordConfigFrom({ ...SET, EASEWRIGHT_DISCORD_SHARDS: '4' }).shards).toBe(4);
  });

  it('name every fault at once, those of the others too', () => {
    const faults = (set: Record<string, string>): unknown => {
      try {
        return discordConfigFrom(set);
      } catch (error) {
        return error instanceof ConfigFaults ? error.faults : error;
      }
    };
    expect(faults({ EASEWRIGHT_UNIT: 'ells' })).toEqual([
      expect.stringContaining("EASEWRIGHT_UNIT is 'ells'"),
      expect.stringContaining('EASEWRIGHT_DISCORD_TOKEN is missing'),
      expect.stringContaining('EASEWRIGHT_DISCORD_APPLICATION is missing'),
    ]);
    const wrong = {
      EASEWRIGHT_DISCORD_TOKEN: 'secret',
      EASEWRIGHT_DISCORD_APPLICATION: 'Easewright',
      EASEWRIGHT_DISCORD_SHARDS: 'many',
      EASEWRIGHT_DISCORD_API: 'discord',
    };
    expect(faults(wrong)).toEqual([
      expect.stringContaining('EASEWRIGHT_DISCORD_TOKEN is no token'),
      expect.stringContaining('EASEWRIGHT_DISCORD_APPLICATION is no application id'),
      'EASEWRIGHT_DISCORD_SHARDS is no number.',
      'EASEWRIGHT_DISCORD_API is no web address.',
    ]);
    expect(faults({ ...SET, EASEWRIGHT_DISCORD_SHARDS: '0' })).toEqual([
      'EASEWRIGHT_DISCORD_SHARDS must be 1 or more.',
    ]);
  });
});

describe('a file named .env', () => {
  let folder: string;
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'easewright-config-'));
  });
  afterEach(() => rmSync(folder, { recursive: true, force: true }));

  /** What a process started in the folder reads: its settings, or its faults; all that it printed. */
  function readIn(environment: Record<string, string>): string {
    const program = `
      import { readConfig } from ${JSON.stringify(resolve('src/config.ts'))};
      try { process.stdout.write(JSON.stringify(readConfig())); } catch (e) { process.stdout.write(e.name + ': ' + e.message); }`;
    const tsx = resolve('node_modules/tsx/dist/loader.mjs');
    return execFileSync(process.execPath, ['--import', tsx, '--input-type=module', '-e', program], {
      cwd: folder,
      env: { PATH: process.env.PATH ?? '', ...environment },
      encoding: 'utf8',
    });
  }

  it('is read, yields to the environment, and nothing is printed about it', () => {
    writeFileSync(join(folder, '.env'), 'EASEWRIGHT_UNIT=in\nEASEWRIGHT_TERMS=uk\n');
    expect(JSON.parse(readIn({ EASEWRIGHT_TERMS: 'us' }))).toEqual({
      ...DEFAULTS,
      data: join(folder, 'data'),
      unit: 'in',
      terms: 'us',
    });
  });

  it('need not be there', () => {
    expect(JSON.parse(readIn({}))).toMatchObject({ unit: null, terms: 'us' });
  });

  it('that cannot be read is named as such', () => {
    mkdirSync(join(folder, '.env'));
    expect(readIn({})).toBe(
      'ConfigFaults: The file .env cannot be read (EISDIR). Make it readable, or remove it.',
    );
  });
});
