import { useEffect, useId, useRef } from 'react';
import { Link, useLocation } from 'wouter';
import { phrase } from '#core/words/phrase.ts';
import { Icon } from '#renderer/parts/icon/icon.tsx';
import { alwaysShown, isWithin, type Screen, screens } from './screens.ts';
import './navigation.css';

function ScreenLink({ screen, place }: { readonly screen: Screen; readonly place: string }) {
  const here = isWithin(screen, place);
  return (
    <Link href={screen.to} className="nav-link" aria-current={here ? 'page' : undefined}>
      <Icon name={screen.icon} />
      <span>{screen.name}</span>
    </Link>
  );
}

/** The seven screens: a column beside the page, or a bar at the bottom of a narrow window with the last three under "More". */
export function Navigation() {
  const [place] = useLocation();
  const more = useRef<HTMLUListElement>(null);
  const moreId = useId();
  // biome-ignore lint/correctness/useExhaustiveDependencies: the sheet closes whenever the place changes
  useEffect(() => more.current?.hidePopover?.(), [place]);
  const rest = screens.slice(alwaysShown);
  return (
    <nav className="nav no-print" aria-label={phrase`Screens`}>
      <ul className="nav-list">
        {screens.map((screen, position) => (
          <li key={screen.to} className={position < alwaysShown ? undefined : 'is-rest'}>
            <ScreenLink screen={screen} place={place} />
          </li>
        ))}
        <li className="nav-more">
          <button
            type="button"
            className="nav-link"
            popoverTarget={moreId}
            data-here={rest.some((screen) => isWithin(screen, place)) || undefined}
          >
            <Icon name="more" />
            <span>{phrase`More`}</span>
          </button>
          <ul ref={more} id={moreId} popover="auto" className="nav-sheet">
            {rest.map((screen) => (
              <li key={screen.to}>
                <ScreenLink screen={screen} place={place} />
              </li>
            ))}
          </ul>
        </li>
      </ul>
    </nav>
  );
}
