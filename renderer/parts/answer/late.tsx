import { type ReactNode, useEffect, useState } from 'react';

interface LateProps {
  /** How long nothing is shown. */
  readonly after_ms: number;
  readonly children: ReactNode;
}

/** Shows its words only once they have been due for a while: what is over quickly is not worth saying. */
export function Late({ after_ms, children }: LateProps): ReactNode {
  const [isDue, setIsDue] = useState(false);
  useEffect(() => {
    const timer = setTimeout(() => setIsDue(true), after_ms);
    return () => clearTimeout(timer);
  }, [after_ms]);
  return isDue ? children : null;
}
