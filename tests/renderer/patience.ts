import { configure } from '@testing-library/react';

// What a page draws may come late on a busy machine, with its first reading of a page’s modules: it is late, not missing.
configure({ asyncUtilTimeout: 15_000 });
