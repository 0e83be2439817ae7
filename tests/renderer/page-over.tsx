import { QueryClientProvider } from '@tanstack/react-query';
import { type RenderResult, render } from '@testing-library/react';
import type { ReactNode } from 'react';
import { Router } from 'wouter';
import { memoryLocation } from 'wouter/memory-location';
import { connect } from '#renderer/app/ask.ts';
import { newQueryClient } from '#renderer/app/query-client.ts';
import { ToastRegion } from '#renderer/parts/toast/toasts.tsx';
import type { Bridge } from '#shared/carriage.ts';
import './patience.ts';

/** Draws a page as the program does, over a stand-in bridge. */
export function pageOver(bridge: Bridge, page: ReactNode, at = '/'): RenderResult {
  connect(bridge);
  const { hook } = memoryLocation({ path: at });
  return render(
    <QueryClientProvider client={newQueryClient()}>
      <Router hook={hook}>
        <ToastRegion>{page}</ToastRegion>
      </Router>
    </QueryClientProvider>,
  );
}
