/** Finds the route of a request by its method and address. */
import type { Route } from './call.ts';

export interface Found {
  readonly route: Route;
  readonly params: Readonly<Record<string, string>>;
  /** Requests with the same bucket share a rate limit: the route with its channel, server or webhook. */
  readonly bucket: string;
}

interface Compiled {
  readonly route: Route;
  readonly method: string;
  readonly steps: readonly string[];
}

const PREFIX = '/api/v10';

export class Router {
  private readonly routes: readonly Compiled[];

  constructor(routes: readonly Route[]) {
    this.routes = routes.map((route) => {
      const [method = '', path = ''] = route.pattern.split(' ');
      return { route, method, steps: path.split('/') };
    });
  }

  find(method: string, path: string): Found | undefined {
    if (!path.startsWith(`${PREFIX}/`)) return undefined;
    const steps = path.slice(PREFIX.length).split('/').map(decodeURIComponent);
    for (const compiled of this.routes) {
      const params = compiled.method === method ? match(compiled.steps, steps) : undefined;
      if (params) return { route: compiled.route, params, bucket: bucket(compiled.route, params) };
    }
    return undefined;
  }
}

function match(pattern: readonly string[], steps: readonly string[]): Record<string, string> | undefined {
  if (pattern.length !== steps.length) return undefined;
  const params: Record<string, string> = {};
  for (const [place, step] of pattern.entries()) {
    const given = steps[place] ?? '';
    if (step.startsWith(':')) params[step.slice(1)] = given;
    else if (step !== given) return undefined;
  }
  return params;
}

/** Channel, server and webhook tell limits apart; callbacks are each their own. */
function bucket(route: Route, params: Readonly<Record<string, string>>): string {
  return `${route.pattern} ${params.channel ?? params.guild ?? params.token ?? ''}`;
}
