import './used-address.css';

/** What stands here when the address was used already: calm, and how to get in again. */
export function UsedAddress() {
  return (
    <main className="used-address">
      <h1>This address was used already</h1>
      <p>Each address opens the kitchen once, so that nobody else on this machine can walk in with it.</p>
      <p>
        Go to the terminal in which Sidejar runs and press <kbd>Enter</kbd>: it prints a fresh address. Your kitchen is
        as you left it.
      </p>
    </main>
  );
}
