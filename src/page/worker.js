/* The shell opens without the kitchen; nothing of a dinner is ever kept here. */
const shell = 'shell-mark';
const files = 'shell-files';

self.addEventListener('install', (event) => {
  event.waitUntil(
    caches
      .open(shell)
      .then((cache) => cache.addAll(files))
      .then(() => self.skipWaiting()),
  );
});

self.addEventListener('activate', (event) => {
  const old = caches.keys().then((names) => names.filter((name) => name !== shell));
  event.waitUntil(
    old
      .then((names) => Promise.all(names.map((name) => caches.delete(name))))
      .then(() => self.clients.claim()),
  );
});

self.addEventListener('fetch', (event) => {
  const { pathname, origin } = new URL(event.request.url);
  const ours = origin === self.location.origin && event.request.method === 'GET';
  if (!ours) return;
  if (pathname === '/') {
    event.respondWith(fetch(event.request).catch(() => caches.match('/')));
  } else if (files.includes(pathname)) {
    event.respondWith(caches.match(pathname).then((kept) => kept ?? fetch(event.request)));
  }
});
