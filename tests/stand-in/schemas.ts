/**
 * A second opinion on recorded payloads: the platform's own published OpenAPI description, where a copy is
 * at hand (its path in the environment variable EASEWRIGHT_OPENAPI). It refuses less than the rules here,
 * and other things, so that the two check each other.
 */
import { readFileSync } from 'node:fs';
import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js';
import { isObject, objects } from './json.ts';
import type { RecordedRequest } from './record.ts';

/** A payload that a schema refuses. */
export interface SchemaFault {
  readonly request: RecordedRequest;
  readonly schema: string;
  readonly path: string;
  readonly says: string;
}

/** The path of the description, or undefined where there is none. */
export function openApiPath(): string | undefined {
  return process.env.EASEWRIGHT_OPENAPI;
}

const READ = new Map<string, Schemas>();

/** The schemas of a description, read once. */
export function schemasIn(path: string): Schemas {
  const known = READ.get(path);
  if (known) return known;
  const fresh = new Schemas(path);
  READ.set(path, fresh);
  return fresh;
}

/** Formats of the description that say nothing about the text itself. */
const OPEN_FORMATS = ['int32', 'int64', 'double', 'snowflake', 'nonce', 'uri', 'date-time'];

const CALLBACKS: Readonly<Record<number, string>> = {
  4: 'CreateMessageInteractionCallbackRequest',
  5: 'CreateMessageInteractionCallbackRequest',
  6: 'UpdateMessageInteractionCallbackRequest',
  7: 'UpdateMessageInteractionCallbackRequest',
  8: 'ApplicationCommandAutocompleteCallbackRequest',
  9: 'ModalInteractionCallbackRequest',
};

const BY_ROUTE: Readonly<Record<string, string>> = {
  'POST /webhooks/:app/:token': 'IncomingWebhookRequestPartial',
  'PATCH /webhooks/:app/:token/messages/:message': 'IncomingWebhookUpdateRequestPartial',
  'POST /channels/:channel/messages': 'MessageCreateRequest',
  'PATCH /channels/:channel/messages/:message': 'MessageEditRequestPartial',
  'PUT /applications/:app/commands': 'ApplicationCommandUpdateRequest',
  'PUT /applications/:app/guilds/:guild/commands': 'ApplicationCommandUpdateRequest',
};

/** The name of the schema a request's body (or, for command lists, each entry) has to fit. */
export function schemaFor(request: RecordedRequest): string | undefined {
  if (request.route !== 'POST /interactions/:id/:token/callback') return BY_ROUTE[request.route ?? ''];
  const type = isObject(request.body) ? request.body.type : undefined;
  return typeof type === 'number' ? CALLBACKS[type] : undefined;
}

export class Schemas {
  private readonly ajv = new Ajv2020({ strict: false, allErrors: false });
  private readonly compiled = new Map<string, ValidateFunction>();

  constructor(path: string) {
    for (const format of OPEN_FORMATS) this.ajv.addFormat(format, true);
    this.ajv.addSchema(JSON.parse(readFileSync(path, 'utf8')), 'openapi');
  }

  /** What the schemas refuse among these requests; requests without a schema are passed over. */
  faults(requests: readonly RecordedRequest[]): SchemaFault[] {
    return requests.flatMap((request) => {
      const schema = schemaFor(request);
      if (schema === undefined) return [];
      const bodies = Array.isArray(request.body) ? objects(request.body) : [request.body];
      return bodies.flatMap((body) => this.faultsOf(request, schema, body));
    });
  }

  private faultsOf(request: RecordedRequest, schema: string, body: unknown): SchemaFault[] {
    const validate = this.validator(schema);
    if (validate(body)) return [];
    return (validate.errors ?? []).map((error) => ({
      request,
      schema,
      path: error.instancePath,
      says: `${error.message}`,
    }));
  }

  private validator(schema: string): ValidateFunction {
    const known = this.compiled.get(schema);
    if (known) return known;
    const fresh = this.ajv.compile({ $ref: `openapi#/components/schemas/${schema}` });
    this.compiled.set(schema, fresh);
    return fresh;
  }
}
