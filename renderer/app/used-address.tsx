import { phrase } from '#core/words/phrase.ts';
import './used-address.css';

/** What stands here when the address was used already: calm, and how to get in again. */
export function UsedAddress() {
  return (
    <main className="used-address">
      <h1>{phrase`This address was used already`}</h1>
      <p>{phrase`Each address opens the kitchen once, so that nobody else on this machine can walk in with it.`}</p>
      <p>
        {phrase`Go to the terminal in which Sidejar runs and press`} <kbd>{phrase`Enter`}</kbd>
        {phrase`: it prints a fresh address. Your kitchen is as you left it.`}
      </p>
    </main>
  );
}
