// The page without a network after the first visit: all files of one publish are kept together, and the next publish replaces them together.
self.importScripts('./service-worker-assets.js');

const family = 'classroom-';
const kept = family + self.assetsManifest.version;

self.addEventListener('install', event => event.waitUntil((async () => {
    const files = self.assetsManifest.assets
        .filter(asset => !asset.url.startsWith('service-worker'))
        .map(asset => new Request(asset.url, { integrity: asset.hash, cache: 'no-cache' }));
    await (await caches.open(kept)).addAll(files);
})()));

self.addEventListener('activate', event => event.waitUntil((async () => {
    const old = (await caches.keys()).filter(name => name.startsWith(family) && name !== kept);
    await Promise.all(old.map(name => caches.delete(name)));
})()));

self.addEventListener('fetch', event => {
    if (event.request.method !== 'GET') return;
    event.respondWith((async () => {
        const asked = event.request.mode === 'navigate' ? 'index.html' : event.request;
        return await (await caches.open(kept)).match(asked) ?? fetch(event.request);
    })());
});
