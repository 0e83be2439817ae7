import type { ReactNode } from 'react';
import { Button } from '#renderer/parts/button/button.tsx';

/** Below a list that goes on: reads more of it. */
export function ShowMore({ children, onMore }: { readonly children: ReactNode; readonly onMore: () => void }) {
  return (
    <div className="button-row show-more">
      <Button onClick={onMore}>{children}</Button>
    </div>
  );
}
