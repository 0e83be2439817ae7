import './fonts.css';
import './tokens.css';
import './base.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { fetchDrawings } from '#renderer/charts/late-drawings.ts';
import { layTheme } from '#renderer/format/window-ways.ts';
import { Failure } from '#shared/failure.ts';
import { App } from './app.tsx';
import { ask, connect } from './ask.ts';
import { findBridge, forgetKey } from './find-bridge.ts';
import { fetchScreens } from './later-screens.ts';
import { UsedAddress } from './used-address.tsx';

// The page's boot: find the way to the desk, make sure that it is let in, show the kitchen.

/** A kept key may be one that the desk has forgotten. Any other failure is shown where it matters. */
async function isLetIn(): Promise<boolean> {
  try {
    await ask('kitchen:open', {});
    return true;
  } catch (error) {
    return !(error instanceof Failure && error.code === 'not-allowed');
  }
}

async function start(): Promise<void> {
  const place = document.getElementById('root');
  if (place === null) throw new Error('The page has no place to draw in.');
  layTheme(document.documentElement);
  const root = createRoot(place);
  const bridge = await findBridge({ window });
  const turnAway = () => {
    forgetKey(window);
    root.render(<UsedAddress />);
  };
  if (bridge === null) {
    turnAway();
    return;
  }
  connect(bridge);
  // Drawn at once: the first answer only tells whether a kept key still opens.
  root.render(
    <StrictMode>
      <App bridge={bridge} />
    </StrictMode>,
  );
  if (!(await isLetIn())) {
    turnAway();
    return;
  }
  requestIdleCallback(() => void fetchScreens().then(fetchDrawings), { timeout: 5000 });
}

void start();
