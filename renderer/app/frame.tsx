import { type ReactNode, useCallback, useEffect, useRef, useState } from 'react';
import { Link, useLocation } from 'wouter';
import { phrase } from '#core/words/phrase.ts';
import { FindBox } from '#renderer/parts/find/find-box.tsx';
import { findWords } from '#renderer/parts/find/find-words.ts';
import { Icon } from '#renderer/parts/icon/icon.tsx';
import { KeysHelp } from '#renderer/parts/keys-help/keys-help.tsx';
import { keysWords } from '#renderer/parts/keys-help/keys-words.ts';
import { startAtHeading } from '#renderer/parts/page-head/heading-focus.ts';
import { SampleMark, Tape } from '#renderer/parts/tape/tape.tsx';
import { TermTip } from '#renderer/parts/term/term-tip.tsx';
import type { Bridge } from '#shared/carriage.ts';
import { DropTarget } from './drop-target.tsx';
import { ErrorBoundary } from './error-boundary.tsx';
import { Navigation } from './navigation.tsx';
import { UndoButtons } from './undo-buttons.tsx';
import { useAnswer } from './use-answer.ts';
import './frame.css';

interface FrameProps {
  readonly bridge: Bridge;
  readonly children: ReactNode;
}

/** What stands around every page: the kitchen's name, the screens, undo. */
export function Frame({ bridge, children }: FrameProps) {
  const [place, go] = useLocation();
  const { data: kitchen } = useAnswer('kitchen:open', {});
  const main = useRef<HTMLElement>(null);
  const isFirst = useRef(true);
  const [over, setOver] = useState<'find' | 'keys' | null>(null);
  const openFind = useCallback(() => setOver('find'), []);
  const openKeys = useCallback(() => setOver('keys'), []);
  const close = useCallback(() => setOver(null), []);

  useEffect(
    () =>
      bridge.listen((event) => {
        if (event.kind !== 'menu') return;
        if (event.act.startsWith('go:')) go(event.act.slice(3));
        if (event.act === 'find') openFind();
        if (event.act === 'keys') openKeys();
      }),
    [bridge, go, openFind, openKeys],
  );

  // A new place starts at its top, and with its heading for those who listen.
  // biome-ignore lint/correctness/useExhaustiveDependencies: the place is what it waits for
  useEffect(() => {
    if (isFirst.current) {
      isFirst.current = false;
      return;
    }
    window.scrollTo(0, 0);
    startAtHeading(main.current);
  }, [place]);

  return (
    <div className="frame">
      <button
        type="button"
        className="skip no-print"
        onClick={() => main.current?.focus()}
      >{phrase`Skip to the page`}</button>
      <header className="frame-side">
        <p className="frame-name">
          <Link href="/">
            <Tape>{phrase`Sidejar`}</Tape>
          </Link>
        </p>
        <p className="frame-kitchen">
          {kitchen?.name}
          {kitchen?.readOnly ? <span className="small soft"> {phrase`(read only)`}</span> : null}
        </p>
        {kitchen !== undefined && kitchen.sampleRows > 0 ? (
          <p className="frame-sample">
            <Link href="/data">
              {phrase`Sample kitchen`} <SampleMark />
            </Link>
          </p>
        ) : null}
        <div className="frame-tools no-print">
          <button type="button" className="frame-tool" onClick={openFind}>
            <Icon name="find" />
            <span>{findWords.open}</span>
          </button>
          <button type="button" className="frame-tool" onClick={openKeys}>
            <Icon name="help" />
            <span>{keysWords.open}</span>
          </button>
        </div>
        <Navigation />
        <UndoButtons bridge={bridge} />
      </header>
      <main ref={main} className="frame-main" tabIndex={-1}>
        <ErrorBoundary key={place}>{children}</ErrorBoundary>
      </main>
      <DropTarget />
      <TermTip />
      <FindBox isOpen={over === 'find'} onOpen={openFind} onClose={close} />
      <KeysHelp isOpen={over === 'keys'} onOpen={openKeys} onClose={close} />
    </div>
  );
}
