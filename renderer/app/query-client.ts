import { QueryClient } from '@tanstack/react-query';
import { requestsShowing } from './what-shows-what.ts';

/** The page's memory of answers. The desk is on this machine: nothing is retried, and changes are told, not polled for. */
export function newQueryClient(): QueryClient {
  return new QueryClient({
    defaultOptions: {
      queries: {
        retry: false,
        networkMode: 'always',
        refetchOnWindowFocus: false,
        staleTime: Number.POSITIVE_INFINITY,
      },
      mutations: { retry: false, networkMode: 'always' },
    },
  });
}

/** Reads again whatever shows rows of these tables. */
export function refreshAfter(client: QueryClient, tables: readonly string[]): Promise<void> {
  const names = requestsShowing(tables);
  return client.invalidateQueries(
    names === null ? {} : { predicate: ({ queryKey }) => names.has(String(queryKey[0])) },
  );
}

/**
 * Changes that come one after the other, such as a sheet being filled, are read together once they pause, and after this long at
 * most: with the reading itself that stays within a second.
 */
const pause_ms = 150;
const most_ms = 800;

/** Gathers the tables that changed and reads again once. A lone change is read after the pause, far within a second. */
export function gatheredRefresh(client: QueryClient): (tables: readonly string[]) => void {
  const gathered = new Set<string>();
  let timer: ReturnType<typeof setTimeout> | undefined;
  let since = 0;
  return (tables) => {
    if (gathered.size === 0) since = Date.now();
    for (const table of tables) gathered.add(table);
    clearTimeout(timer);
    timer = setTimeout(
      () => {
        const changed = [...gathered];
        gathered.clear();
        void refreshAfter(client, changed);
      },
      Math.max(0, Math.min(pause_ms, since + most_ms - Date.now())),
    );
  };
}
