// While it is being developed nothing is kept; the published one is service-worker.published.js.
self.addEventListener('fetch', () => { });
