import { ButtonLink } from '#renderer/parts/button/button.tsx';
import { PageHead } from '#renderer/parts/page-head/page-head.tsx';

/** An address that leads to no screen. */
export function NowherePage() {
  return (
    <>
      <PageHead title="Nothing stands here" lead="This address leads to no screen. It may be an old one." />
      <ButtonLink to="/">Go to Today</ButtonLink>
    </>
  );
}
