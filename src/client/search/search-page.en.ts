export const notLoaded = 'Search did not load. All pages are listed below.';
