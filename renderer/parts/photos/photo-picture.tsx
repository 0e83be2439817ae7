import { useEffect, useRef, useState } from 'react';
import { phrase } from '#core/words/phrase.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { usePicture } from './use-picture.ts';
import { words } from './words.ts';
import './photos.css';

type Photo = ValueOf<'photos:ofJar'>['photos'][number];

/** True once the element has come near the part of the page that is seen. */
function useNear() {
  const place = useRef<HTMLButtonElement>(null);
  const [isNear, setNear] = useState(false);
  useEffect(() => {
    const element = place.current;
    if (element === null || isNear) return;
    const watch = new IntersectionObserver(
      (entries) => {
        if (entries.some(({ isIntersecting }) => isIntersecting)) setNear(true);
      },
      { rootMargin: '400px' },
    );
    watch.observe(element);
    return () => watch.disconnect();
  }, [isNear]);
  return { place, isNear, setNear };
}

interface PhotoPictureProps {
  readonly photo: Photo;
  /** Which jar and when: said to those who can't see it. */
  readonly what: string;
}

/** One photo: small in its place, large when pressed. A missing or altered file is said, never shown as something else. */
export function PhotoPicture({ photo, what }: PhotoPictureProps) {
  const { place, isNear, setNear } = useNear();
  const large = useRef<HTMLDialogElement>(null);
  const picture = usePicture(photo.id, isNear && photo.file === 'here');
  const said = photo.note === null ? what : `${what}: ${photo.note}`;
  if (photo.file !== 'here' || picture.state === 'fault') {
    const why = picture.state === 'fault' ? picture.words : photo.file === 'altered' ? words.altered : words.missing;
    return <p className="photo-fault small">{`${what}. ${why}`}</p>;
  }
  const image =
    picture.state === 'shown' ? (
      <img src={picture.address} alt={said} width={photo.width} height={photo.height} decoding="async" />
    ) : null;
  return (
    <>
      <button
        ref={place}
        type="button"
        className="photo"
        aria-label={words.show(said)}
        onFocus={() => setNear(true)}
        aria-busy={image === null}
        onClick={() => large.current?.showModal()}
      >
        {image}
      </button>
      <dialog ref={large} className="photo-large" aria-label={said}>
        {image}
        <form method="dialog">
          <p>{said}</p>
          {/* biome-ignore lint/a11y/useButtonType: it closes the dialog by its form */}
          <button className="button is-plain">{phrase`Close`}</button>
        </form>
      </dialog>
    </>
  );
}
