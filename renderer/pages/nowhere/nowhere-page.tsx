import { phrase } from '#core/words/phrase.ts';
import { ButtonLink } from '#renderer/parts/button/button.tsx';
import { PageHead } from '#renderer/parts/page-head/page-head.tsx';

/** An address that leads to no screen. */
export function NowherePage() {
  return (
    <>
      <PageHead
        title={phrase`Nothing stands here`}
        lead={phrase`This address leads to no screen. It may be an old one.`}
      />
      <ButtonLink to="/">{phrase`Go to Today`}</ButtonLink>
    </>
  );
}
