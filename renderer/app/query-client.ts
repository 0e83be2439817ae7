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
