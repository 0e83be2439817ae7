import type { App } from 'electron';

/** The program asks no server anything: a certificate that fails is refused, and none of the user's is handed out. */
export function refuseCertificates(app: Pick<App, 'on'>): void {
  app.on('certificate-error', (event, _page, _url, _error, _certificate, answer) => {
    event.preventDefault();
    answer(false);
  });
  app.on('select-client-certificate', (event, _page, _url, _certificates, answer) => {
    event.preventDefault();
    answer();
  });
}
