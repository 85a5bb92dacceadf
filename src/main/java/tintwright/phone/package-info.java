/**
 * The phone, second face of the bench: pages served by the bench itself on the local network while the person wants
 * them. A {@link tintwright.bench.top.BenchTop} comes in; an address with its secret goes out. What a request says never
 * names a file, and nothing is fetched from elsewhere. It knows neither the window nor the command line.
 */
package tintwright.phone;
