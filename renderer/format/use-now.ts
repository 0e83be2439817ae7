import { useEffect, useState } from 'react';

const tick_ms = 60_000;

/** The time of this machine in milliseconds, a minute fresh at most. */
export function useNow(): number {
  const [now, setNow] = useState(() => Date.now());
  useEffect(() => {
    const timer = setInterval(() => setNow(Date.now()), tick_ms);
    return () => clearInterval(timer);
  }, []);
  return now;
}
