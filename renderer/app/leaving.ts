// Whether the page is about to go: what would wait for a frame or for an answer must be sent at once then.

let isGoing = false;

function setGoing(next: boolean): () => void {
  return () => {
    isGoing = next;
  };
}

if (typeof window !== 'undefined') {
  // Heard before anybody else hears it; a page that comes back from the browser's memory stays.
  window.addEventListener('pagehide', setGoing(true), { capture: true });
  window.addEventListener('pageshow', setGoing(false), { capture: true });
}

export function pageIsGoing(): boolean {
  return isGoing;
}
