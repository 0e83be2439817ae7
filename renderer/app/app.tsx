import { QueryClientProvider } from '@tanstack/react-query';
import { useEffect, useRef, useState, useSyncExternalStore } from 'react';
import { Router } from 'wouter';
import { useHashLocation } from 'wouter/use-hash-location';
import { onWindowWays, windowWays } from '#renderer/format/window-ways.ts';
import { ToastRegion } from '#renderer/parts/toast/toasts.tsx';
import type { Bridge } from '#shared/carriage.ts';
import { Frame } from './frame.tsx';
import { gatheredRefresh, newQueryClient } from './query-client.ts';
import { Routes } from './routes.tsx';

/** The whole page over one bridge. */
export function App({ bridge }: { readonly bridge: Bridge }) {
  const [client] = useState(newQueryClient);
  const ways = useSyncExternalStore(onWindowWays, windowWays);
  useEffect(() => {
    const refresh = gatheredRefresh(client);
    return bridge.listen((event) => {
      if (event.kind === 'changed') refresh(event.tables);
    });
  }, [bridge, client]);
  // The desk says figures too: what it said with the other mark is asked again.
  const saidWith = useRef(ways.decimal);
  useEffect(() => {
    if (saidWith.current !== ways.decimal) void client.invalidateQueries();
    saidWith.current = ways.decimal;
  }, [client, ways.decimal]);
  return (
    <QueryClientProvider client={client}>
      <Router hook={useHashLocation}>
        <ToastRegion>
          <Frame bridge={bridge}>
            {/* Hours, days and figures are written in many places: what is shown is drawn anew when their way changes. */}
            <Routes key={`${ways.hours}${ways.decimal}${ways.firstDay}`} />
          </Frame>
        </ToastRegion>
      </Router>
    </QueryClientProvider>
  );
}
