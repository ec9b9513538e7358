// Before anything is drawn, so that nobody sees the other ink first.
const ink = localStorage.getItem('zp-ink');
if (ink === 'paper' || ink === 'slate') document.documentElement.dataset.ink = ink;
