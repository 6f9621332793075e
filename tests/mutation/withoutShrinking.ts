import fc from 'fast-check';

// a planted fault is found by the first bed that fails: to look for a smaller one only takes time
fc.configureGlobal({ endOnFailure: true });
